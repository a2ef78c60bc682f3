/** Verdicts and the rubric they follow, in a file of its own. */
export { grade } from '../../lib/grading/grade.ts';
export { default as RubricForm } from './RubricForm.tsx';
