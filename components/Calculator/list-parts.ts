/**
 * What only calculations with lists need: rows to type into and rows to read. Loaded apart, so that
 * a lesson without them does not pay for them.
 */
import RowsField from '../QuantityField/RowsField.tsx';
import ResultTable from './ResultTable.tsx';

export const listParts = { RowsField, ResultTable };
export type ListParts = typeof listParts;
