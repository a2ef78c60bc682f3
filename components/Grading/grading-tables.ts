/** Tables and records of graded coupons, in a file of its own. */
export { merged, readGrading, writeGrading } from '../../lib/grading/grading-csv.ts';
export { saveRecord } from './save-record.ts';
