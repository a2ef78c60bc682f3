/**
 * The published values, one file a calculation. Tests, the check page and the audit read them here.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { z } from 'astro/zod';
import { parse } from 'yaml';
import { isSource, type SourceId } from '../lib/sources.ts';
import { isUnit, type Unit } from '../lib/units.ts';

const cell = z.union([z.string(), z.number()]);

export const checkSchema = z
  .strictObject({
    claim: z.string().describe('What the source says, as a sentence in our words'),
    inputs: z
      .record(z.string(), z.union([cell, z.array(z.record(z.string(), cell))]))
      .describe('The inputs as the source gives them, with their units'),
    output: z.string().optional().describe('The output compared; inside a list as name.row.column'),
    in: z.custom<Unit>((text) => typeof text === 'string' && isUnit(text)).optional(),
    printed: z.string().optional().describe('The value exactly as printed, in quotes'),
    refuses: z
      .string()
      .optional()
      .describe('The input that is refused, where the source gives no answer'),
    tolerance: z
      .strictObject({ is: z.number().positive(), why: z.string() })
      .optional()
      .describe('Only where half a unit of the last digit does not serve, with the reason'),
    source: z.custom<SourceId>((id) => typeof id === 'string' && isSource(id), 'unknown source'),
    at: z.string().describe('Clause, table, page or example'),
    known: z.enum(['read', 'memory', 'practice', 'derived']),
    note: z.string().optional(),
  })
  .refine(
    (check) =>
      (check.refuses === undefined) === (check.output !== undefined && check.printed !== undefined),
    {
      message: 'needs either output and printed, or refuses',
    },
  );

export type Check = z.infer<typeof checkSchema> & {
  id: string;
  calculation: string;
};

export function readChecks(folder = 'content/checks'): Check[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith('.yaml'))
    .sort()
    .flatMap((name) => {
      const calculation = name.replace('.yaml', '');
      const read = z.array(checkSchema).safeParse(parse(readFileSync(`${folder}/${name}`, 'utf8')));
      if (!read.success) throw new Error(`${folder}/${name}\n${z.prettifyError(read.error)}`);
      return read.data.map((check, index) => ({
        ...check,
        calculation,
        id: `${calculation}-${index + 1}`,
      }));
    });
}
