/** The boxes of the booth page and its links, in a file of their own. */
export { default as LinkList } from './LinkList.tsx';
export { default as NumbersForm } from './NumbersForm.tsx';
export { default as PlacesForm } from './PlacesForm.tsx';
