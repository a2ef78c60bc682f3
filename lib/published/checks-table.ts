/** Published values beside computed ones, as a table. */
import type { Compared } from '../check.ts';
import { type PublishedTable, publishedTable } from './table.ts';

export interface CheckRow extends Compared {
  check: {
    id: string;
    calculation: string;
    claim: string;
    inputs: object;
    output?: string | undefined;
    printed?: string | undefined;
    refuses?: string | undefined;
    source: string;
    at: string;
    known: string;
    note?: string | undefined;
    tolerance?: { is: number; why: string } | undefined;
  };
  computed?: { value: unknown; unit?: string | undefined };
}

const plain = (value: unknown) =>
  value === undefined || value === null || typeof value === 'number'
    ? (value ?? undefined)
    : String(value);

/** A row for each check, in the order given. */
export const checksTable = (checks: readonly CheckRow[]): PublishedTable =>
  publishedTable(
    'checks',
    'Every value that a publication prints and this site computes.',
    checks,
    [
      { name: 'check', holds: 'Id.', cell: ({ check }) => check.id },
      { name: 'calculation', holds: 'Calculation id.', cell: ({ check }) => check.calculation },
      {
        name: 'claim',
        holds: 'What the source says, in our words.',
        cell: ({ check }) => check.claim,
      },
      {
        name: 'inputs',
        holds: 'As typed, as JSON.',
        cell: ({ check }) => JSON.stringify(check.inputs),
      },
      {
        name: 'output',
        holds: 'Which result is compared; empty where the input is refused.',
        cell: ({ check }) => check.output,
      },
      {
        name: 'printed',
        holds: 'The value as the source prints it.',
        cell: ({ check }) => check.printed,
      },
      {
        name: 'refused input',
        holds: 'The input that must be refused, where the source gives no answer.',
        cell: ({ check }) => check.refuses,
      },
      {
        name: 'computed',
        holds: 'The value as computed.',
        cell: ({ computed }) => plain(computed?.value),
      },
      { name: 'unit', holds: 'Unit of both.', cell: ({ computed }) => computed?.unit },
      {
        name: 'difference',
        holds: 'Computed less printed, where both are numbers.',
        cell: ({ difference }) => difference,
      },
      {
        name: 'within',
        holds: 'The largest difference that agrees.',
        cell: ({ within }) => within,
      },
      { name: 'agrees', holds: 'yes or no.', cell: ({ agrees }) => (agrees ? 'yes' : 'no') },
      {
        name: 'why',
        holds: 'Reason of a wider tolerance.',
        cell: ({ check }) => check.tolerance?.why,
      },
      { name: 'source', holds: 'Source id.', cell: ({ check }) => check.source },
      { name: 'at', holds: 'Clause, table, page or example.', cell: ({ check }) => check.at },
      {
        name: 'known',
        holds: 'read, memory, practice or derived.',
        cell: ({ check }) => check.known,
      },
      { name: 'note', holds: 'Remark.', cell: ({ check }) => check.note },
    ],
  );
