/** What the booth page loads beside its form, in a file of its own. */
export { default as BoothSheets } from './BoothSheets.tsx';
export { fitSheets, fitSheetsSoon } from './fit-sheets.ts';
export { default as RotationList } from './RotationList.tsx';
