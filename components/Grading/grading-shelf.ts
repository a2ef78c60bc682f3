import { emptyBook, gradingBook } from '../../lib/files/grading-book.ts';
import { Shelf } from '../Shelf/shelf.ts';

/** Where the grading book lies in this browser. */
export const gradingShelf = () => new Shelf(gradingBook, emptyBook);
