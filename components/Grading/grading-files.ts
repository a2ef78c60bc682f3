/** How the grading page keeps its book and shows it, in a file of its own. */
export { emptyBook, gradingBook } from '../../lib/files/grading-book.ts';
export { download } from '../Shelf/download.ts';
export { default as FileButtons } from '../Shelf/FileButtons.tsx';
export { default as CouponForm } from './CouponForm.tsx';
export { default as GradedList } from './GradedList.tsx';
export { gradingShelf } from './grading-shelf.ts';
