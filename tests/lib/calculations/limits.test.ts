/**
 * What each calculation takes and refuses by itself, field by field, against `limits.txt`: hard limits,
 * the usual range, what stands in for a field left empty, and which fields may be left out. No source
 * prints these bounds (common practice); they are written down a second time so that none slips unseen.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { calculationIds } from '../../../content/commands/calculation-ids.ts';
import type { Inputs } from '../../../lib/calculation.ts';
import { loadCalculation } from '../../../lib/calculations.ts';
import { readInputs } from '../../../lib/read-inputs.ts';
import { readQuantity } from '../../../lib/text/quantity-text.ts';
import { convert, type Unit } from '../../../lib/units.ts';

interface Row {
  name: string;
  optional: boolean;
  whole: boolean;
  limits?: [least: number, most: number];
  usual?: [least: number, most: number];
  unit?: Unit;
  standsIn?: string;
}

/** `stub?: whole 0..30 in, usual 1..4 = 2 in`, of which only the name has to be there. */
function readRow(line: string): Row {
  const [, name = '', optional, whole, least, most, unit, low, high, standsIn] =
    /^([\w.]+)(\?)?(?:: (whole )?(.+?)\.\.(.+?) ([^,\s]+)(?:, usual (.+?)\.\.(.+?))?)?(?: = (.+))?$/.exec(
      line,
    ) ?? [];
  return {
    name,
    optional: optional !== undefined,
    whole: whole !== undefined,
    ...(least && { limits: [Number(least), Number(most)], unit: unit as Unit }),
    ...(low && { usual: [Number(low), Number(high)] }),
    ...(standsIn && { standsIn }),
  };
}

const text = readFileSync(new URL('limits.txt', import.meta.url), 'utf8');
const written = new Map(
  text
    .split(/^# /m)
    .slice(1)
    .map((part) => part.trim().split('\n'))
    .map(([id = '', ...lines]) => [id, new Map(lines.map(readRow).map((row) => [row.name, row]))]),
);

/** Columns of a list under their dotted name, as fields of their own. */
const fieldsOf = (inputs: Inputs): [string, Inputs[string]][] =>
  Object.entries(inputs).flatMap(([name, input]) => [
    [name, input],
    ...('list' in input
      ? fieldsOf(input.list).map(([column, it]): [string, Inputs[string]] => [
          `${name}.${column}`,
          it,
        ])
      : []),
  ]);

it('lists every calculation', () => {
  expect([...written.keys()].sort()).toEqual(calculationIds().sort());
});

describe.each([...written])('%s', async (id, rows) => {
  const fields = fieldsOf((await loadCalculation(id)).inputs);
  const none: Row = { name: '', optional: false, whole: false };

  it('has the fields that are written down', () => {
    expect(fields.map(([name]) => name)).toEqual(expect.arrayContaining([...rows.keys()]));
  });

  it.each(fields.map(([name, input]) => ({ name, input, row: rows.get(name) ?? none })))(
    'takes and refuses in $name what is written down',
    ({ input, row: { limits, usual, unit, whole, optional, standsIn } }) => {
      const read = (typed?: string) => {
        const { problems, cautions, values } = readInputs(
          { one: input },
          typed === undefined ? {} : { one: typed },
          'declared',
        );
        return { refused: problems.map(({ text }) => text).join(), cautions, value: values.one };
      };
      const left = read();
      if (standsIn !== undefined) {
        const quantity = readQuantity(standsIn, unit ?? '1');
        if (!unit || 'problem' in quantity) expect(left.value).toBe(standsIn);
        else expect(left.value).toBeCloseTo(convert(quantity.value, quantity.unit, unit), 9);
      } else if (optional) expect(left).toMatchObject({ refused: '', value: undefined });
      else expect(left.refused).toMatch(/ is missing$|nothing is listed$/);
      expect('limits' in input).toBe(limits !== undefined);
      if (!limits) return;
      const [least, most] = limits;
      const step = (bound: number) => (whole ? 1 : Math.max(1, Math.abs(bound)) * 1e-5);
      const at = (value: number) => read(`${Number(value.toFixed(9))} ${unit}`.replace(/ 1$/, ''));
      for (const bound of limits) expect(at(bound).refused).toBe('');
      expect(at(least - step(least)).refused).toContain('must be at least');
      expect(at(most + step(most)).refused).toContain('must be at most');
      if (least + 0.5 < most)
        expect(at(least + 0.5).refused).toMatch(whole ? /needs a whole number$/ : /^$/);
      const [low, high] = usual ?? limits;
      for (const bound of [low, high]) expect(at(bound).cautions).toEqual([]);
      const said = (value: number) =>
        at(value)
          .cautions.map(({ text }) => text)
          .join();
      if (low > least) expect(said(low - step(low))).toContain('is usually at least');
      if (high < most) expect(said(high + step(high))).toContain('is usually at most');
      if (!usual) expect([at(least), at(most)].flatMap(({ cautions }) => cautions)).toEqual([]);
    },
  );
});
