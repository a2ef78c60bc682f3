/** What the booth page loads beside its form, in a file of its own. */
export { default as BoothSheets } from './BoothSheets.tsx';
export { fitSheets, fitSheetsSoon } from './fit-sheets.ts';
export { default as LinkList } from './LinkList.tsx';
export { default as NumbersForm } from './NumbersForm.tsx';
export { default as PlacesForm } from './PlacesForm.tsx';
export { default as RotationList } from './RotationList.tsx';
