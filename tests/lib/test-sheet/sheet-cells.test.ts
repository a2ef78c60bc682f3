/**
 * The sheet cell by cell for tests whose rows are known. AWS D1.1:2020 Tables 6.10 and 6.11 (a coupon of
 * thickness T covers 1/8 in to 2T, pipe from 24 in) and 10.13, ASME IX QW-452.1(b) (twice the deposit)
 * and QW-452.3 (pipe from 2-7/8 in), QW-452.1(a) for the bends; which are read stands at the tables.
 */
import { describe, expect, it } from 'vitest';
import type { State } from '../../../lib/page-state.ts';
import { cutLayout } from '../../../lib/test-sheet/cut-layout.ts';
import { plungerWarning } from '../../../lib/test-sheet/plunger-warning.ts';
import { loadSheetRules, sheetInputs } from '../../../lib/test-sheet/sheet-rules.ts';
import {
  openingState,
  readSheet,
  sheetQuery,
  withUnits,
} from '../../../lib/test-sheet/sheet-state.ts';
import { testSheet } from '../../../lib/test-sheet/test-sheet.ts';
import type { System } from '../../../lib/units.ts';

type Named = Parameters<typeof cutLayout>[3][number];

const rules = await loadSheetRules();
const inputs = sheetInputs(rules);
const made = (part: State, system: System = 'us') =>
  testSheet(rules, { ...openingState(system), ...part }, system);
const plain = (text: string) => text.replaceAll('\u00a0', ' ');
const table = (sheet: ReturnType<typeof made>) =>
  Object.fromEntries(
    sheet.rows.map(({ label, cells }) => [label, cells.map((cell) => cell.map(plain))]),
  );
const pipe = { form: 'pipe', thickness: '', nps: '6', schedule: '40' };

describe('a plate of 3/8 in, 10 mm, in 3G and 4G', () => {
  it.each([
    ['us', '1/8 in', '3/4 in', '24 in', '2-7/8 in', '1/32 in', '3/8 in'],
    ['metric', '3 mm', '20 mm', '600 mm', '73 mm', '1 mm', '10 mm'],
  ] as const)(
    'in %s reads as both codes print it',
    (system, least, twice, large, small, cut, sum) => {
      const sheet = made({}, system);
      const cells = table(sheet);
      expect(cells.Grooves).toEqual([
        ['flat, horizontal, vertical, overhead'],
        ['flat, vertical, overhead'],
      ]);
      expect(cells.Thickness).toEqual([[`${least} to ${twice}`], [`no minimum to ${twice}`]]);
      expect(cells['Outside diameter of pipe']).toEqual([
        [`${large} to unlimited`],
        [`${small} to unlimited`],
      ]);
      expect(cells['Deposit 1: E7018 (F4), with backing']).toEqual([
        ['by the coupon', 'Also covers: F1, F2, F3'],
        [`twice its deposit: up to ${twice}`, 'Also covers: F1, F2, F3 with backing'],
      ]);
      expect(cells.Specimens).toEqual([
        ['2 × face bend, 2 × root bend'],
        [
          '4 × side bend',
          'Or a face and a root bend instead of each two side bends (2010 QW-452.1, note 3, read)',
        ],
      ]);
      expect(cells['By eye']?.[0]).toContain(`Undercut: at most ${cut}`);
      expect(cells['By eye']?.[0]).toContain('Craters filled: filled to the size of the weld');
      expect(cells['By eye']?.[1]).toEqual(['Crack: none', 'Incomplete fusion: none']);
      expect(cells['On a bent strap']?.[0]?.[1]).toMatch(new RegExp(`add up to at most ${sum}$`));
      expect(cells['On a bent strap']?.[1]).toHaveLength(2);
      expect(cells['Six months without use']).toEqual([
        ['write the day of the test'],
        ['write the day of the test'],
      ]);
      expect(cells['Retest at once']?.[0]?.[0]).toMatch(/^Two welds of each kind/);
      expect(cells['Retest at once']?.[1]?.[0]).toMatch(/^Two coupons in a row/);
      expect(cells['Retest after training']?.[1]?.[0]).toMatch(/then a new test/);
      expect(sheet.columns.map(({ groups }) => groups)).toEqual([['F4'], ['F4']]);
      expect(sheet.cautions).toEqual([
        'Backing was used throughout, so an open root is not qualified.',
      ]);
    },
  );

  it('says where the codes part, but not for the places that it is known from', () => {
    const { rows } = made({});
    expect(rows.filter(({ differ }) => !differ).map(({ label }) => label)).toEqual([
      'Fillets',
      'Where they are cut',
      'Six months without use',
      'Known from',
    ]);
    const places = table(made({}))['Known from'] ?? [];
    expect(places[0]?.[0]).toBe('AWS D1.1, 2020 Table 6.10 (read)');
    expect(places[1]?.[0]).toBe('ASME IX, QW-461.9 (from memory)');
    for (const cell of places) expect(new Set(cell).size).toBe(cell.length);
  });

  it('opens in the sizes of each system, with E7018 uphill on a strip', () => {
    const sizes = (system: System) => {
      const { thickness, strap, plunger } = openingState(system);
      return [thickness, strap, plunger];
    };
    expect(sizes('us')).toEqual(['3/8 in', '3/8 in', '1-1/2 in']);
    expect(sizes('metric')).toEqual(['10 mm', '10 mm', '40 mm']);
    expect(made({}).coupon).toEqual([
      { label: 'Coupon', text: 'plate, 3/8 in' },
      { label: 'Position', text: '3G+4G' },
      { label: 'Strap', text: '3/8 in' },
      { label: 'Bend radius', text: '3/4\u00a0in' },
      { label: 'Strain of its skin', text: '20\u00a0%' },
    ]);
    expect(made({}, 'metric').coupon[3]).toEqual({ label: 'Bend radius', text: '20\u00a0mm' });
  });
});

describe('what was laid', () => {
  it('by one filler is as thick as the coupon, unless its own thickness is told', () => {
    const one = { classification: 'E7018', backing: 'with backing' };
    const thick = (rows: Record<string, string>[]) =>
      made({ thickness: '1/2 in', deposits: rows }).deposits.map(({ thickness }) => thickness);
    expect(thick([one])).toEqual(['1/2 in']);
    expect(thick([{ ...one, thickness: '1/4 in' }])).toEqual(['1/4 in']);
    expect(thick([{ ...one, thickness: '1/8 in' }, one])).toEqual(['1/8 in', undefined]);
    expect(thick([])).toEqual([]);
  });

  it('by two fillers counts for each by itself under ASME IX', () => {
    const sheet = made({
      ...pipe,
      code: 'ASME IX',
      test: '6G',
      schedule: '80',
      deposits: [
        { classification: 'E6010', thickness: '1/8 in', backing: 'without backing' },
        { classification: 'E7018', thickness: '0.3 in', backing: 'with backing' },
      ],
    });
    const cells = table(sheet);
    // 2 × (1/8 + 0.3) in: over its own root the F4 deposit covers F3 as well (QW-433, from memory).
    expect(cells['Deposit 1: E6010 (F3), without backing']?.[0]?.[0]).toBe(
      'twice its deposit: up to 0.85 in',
    );
    expect(cells['Deposit 2: E7018 (F4), with backing']?.[0]?.[0]).toBe(
      'twice its deposit: up to 0.6 in',
    );
    expect(cells['Outside diameter of pipe']?.[0]).toEqual(['2-7/8 in to unlimited']);
    expect(cells.Thickness?.[0]).toEqual(['no minimum to see deposits']);
    expect(cells['By eye']?.[0]).toEqual([
      'Crack: none',
      'Incomplete fusion: none',
      'Incomplete penetration: none',
    ]);
    expect(cells['By eye']?.[1]).toContain('Melt-through: at most 1/8 in');
    expect(sheet.columns[0]?.groups).toEqual(['F3', 'F4']);
    expect(sheet.cautions).toHaveLength(2);
    expect(cells['Six months without use']?.[0]).toEqual(['write the day of the test']);
  });

  it('with backing throughout asks nothing of the root', () => {
    expect(table(made({ code: 'ASME IX' }))['By eye']?.[0]).toHaveLength(2);
  });
});

describe('a fillet test', () => {
  it('has no bend, a leg and a face to look at, and a piece to break and one to etch', () => {
    const sheet = made({ test: '2F', day: '2026-03-02' });
    expect(sheet.coupon.map(({ label }) => label)).toEqual(['Coupon', 'Position']);
    const cells = table(sheet);
    expect(cells.Specimens?.[0]).toEqual(['1 × fillet break, 1 × macro-etch']);
    expect(cells['By eye']?.[0]).toContain('Convexity: by the width of the face');
    expect(cells['Six months without use']).toEqual([
      ['good through 2026-09-02'],
      ['good through 2026-09-01'],
    ]);
    expect(sheet.columns.map(({ until }) => until)).toEqual(['2026-09-02', '2026-09-01']);
    expect(sheet.day).toBe('2026-03-02');
  });
  it('on pipe leaves open which quarter is broken', () => {
    const sheet = made({ ...pipe, test: '5F' });
    expect(sheet.columns[0]?.cuts?.layouts).toEqual([]);
    expect(sheet.columns[0]?.cuts?.notes).toEqual([expect.stringMatching(/^From a pipe fillet/)]);
  });
});

describe('the coupon', () => {
  const size = (part: State, system: System = 'us') =>
    made({ test: '6G', ...part }, system)
      .coupon.slice(0, 2)
      .map(({ text }) => text);
  it('of pipe takes both sizes from the ordered pipe, or what was typed (ASME B36.10M: 6.625 by 0.280 in, 168.3 by 7.11 mm)', () => {
    expect(size(pipe)).toEqual(['pipe, 0.28 in', '6.625 in, NPS 6 Sch 40']);
    expect(size(pipe, 'metric')).toEqual(['pipe, 7.11 mm', '168.3 mm, NPS 6 Sch 40']);
    expect(size({ ...pipe, thickness: '1/2 in', outsideDiameter: '7 in' })).toEqual([
      'pipe, 1/2 in',
      '7 in, NPS 6 Sch 40',
    ]);
    expect(size({ ...pipe, nps: '', thickness: '1/2 in', outsideDiameter: '7 in' })).toEqual([
      'pipe, 1/2 in',
      '7 in',
    ]);
  });
  it('of pipe without a size asks for it, without a word about a pipe that was not ordered', () => {
    for (const part of [
      { nps: '', schedule: '40' },
      { nps: '6', schedule: '' },
    ]) {
      const sheet = made({ ...pipe, test: '6G', ...part });
      expect(Object.keys(sheet.problems).sort()).not.toContain('nps');
      expect(Object.keys(sheet.problems).sort()).not.toContain('schedule');
      expect(sheet.problems).toHaveProperty('thickness');
    }
  });
  it('of plate leaves pipe and its edition aside', () => {
    const sheet = made({ nps: '1/2', schedule: '120', edition: 'older, with named test pipes' });
    expect(sheet.problems).toEqual({});
    expect(sheet.coupon.map(({ label }) => label)).toEqual([
      'Coupon',
      'Position',
      'Strap',
      'Bend radius',
      'Strain of its skin',
    ]);
    expect(made({ ...pipe, test: '6G' }).coupon.map(({ label }) => label)).not.toContain(
      'Edition of AWS D1.1',
    );
  });
  it('bent wrongly is told at its field, and the day once', () => {
    const sheet = made({ strap: 'x', plunger: '', day: 'x' });
    expect(sheet.problems.strap).toBeDefined();
    expect(sheet.problems.plunger).toBeDefined();
    expect(sheet.problems).not.toHaveProperty('thickness');
    expect(sheet.problems.day).toMatch(/^Day of the test/);
    expect(Object.keys(sheet.problems).sort()).toEqual(['day', 'plunger', 'strap']);
  });
  it('that one code does not know is told of the chosen one', () => {
    const sheet = made({ test: '2G+3G+4G' });
    expect(sheet.problems.test).toContain('has no row under AWS D1.1');
    expect(sheet.columns[0]).toMatchObject({ specimens: [], groups: [], until: '', cautions: [] });
    expect(sheet.columns[0]?.cells.size).toBe(0);
    expect(sheet.rows.map(({ cells }) => cells[0])).toEqual(sheet.rows.map(() => []));
    expect(made({ test: '2G+3G+4G', code: 'ASME IX' }).problems).toEqual({});
    // Anything else than a code is the first one.
    expect(made({ code: 'other' }).code).toBe('AWS D1.1');
  });
  it('has no note 3 without side bends, nor under AWS D1.1', () => {
    const sheet = made({ code: 'ASME IX', test: '3F', thickness: '1/2 in' });
    expect(table(sheet).Specimens?.[0]).toHaveLength(1);
    const structural = made({ thickness: '1/2 in' });
    expect(table(structural).Specimens?.[0]).toEqual(['4 × side bend']);
  });
});

describe('where pieces are cut', () => {
  const named = (...all: string[]): Named[] =>
    all.map((text) => {
      const [test, ...kind] = text.split(' ');
      return { id: `${test} ${kind.join(' ')} 1`, kind: kind.join(' ') };
    });
  it('six of a combined test lie on two pipes under AWS D1.1, on one under ASME IX', () => {
    const pieces = named(
      ...['2G face bend', '2G root bend'],
      ...['5G face bend', '5G root bend', '5G face bend', '5G root bend'],
    );
    const tests = ['2G', '5G'];
    const on = (code: 'AWS D1.1' | 'ASME IX', form: 'pipe' | 'plate', list = tests) =>
      cutLayout(code, form, list, pieces);
    expect(on('AWS D1.1', 'pipe').layouts.map(({ test }) => test)).toEqual(tests);
    expect(on('AWS D1.1', 'pipe').notes).toHaveLength(2);
    expect(on('AWS D1.1', 'pipe').notes[0]).toMatch(/^A pipe that was rolled/);
    expect(on('ASME IX', 'pipe')).toMatchObject({
      layouts: [],
      notes: [expect.stringMatching(/^Six pieces/)],
    });
    expect(on('ASME IX', 'plate').layouts).toHaveLength(2);
    expect(on('ASME IX', 'pipe', ['5G']).layouts).toHaveLength(1);
    // Of a test without pieces there is nothing to draw.
    expect(on('ASME IX', 'pipe', ['5G', '6G']).layouts).toHaveLength(1);
    expect(on('AWS D1.1', 'plate', ['3G']).layouts).toEqual([]);
  });
  it('two side bends of a pipe are opposite each other, and of four no fifth is drawn', () => {
    const places = (count: number) => {
      const kinds = Array.from({ length: count }, () => '6G side bend');
      const [layout] = cutLayout('ASME IX', 'pipe', ['6G'], named(...kinds)).layouts;
      return layout?.on === 'pipe' ? layout.places.map(({ hour }) => hour) : [];
    };
    expect(places(2)).toEqual([10.5, 4.5]);
    expect(places(4)).toEqual([1.5, 4.5, 7.5, 10.5]);
    expect(places(5)).toHaveLength(4);
    const [mixed] = cutLayout(
      'ASME IX',
      'pipe',
      ['2G'],
      named('2G root bend', '2G face bend'),
    ).layouts;
    expect(mixed?.on === 'pipe' && mixed.places.map(({ specimen }) => specimen.kind)).toEqual([
      'face bend',
      'root bend',
    ]);
  });
  it('a strip of a plate holds no restart unless it is broken', () => {
    const strips = (...kinds: string[]) => {
      const [layout] = cutLayout('AWS D1.1', 'plate', ['2F'], named(...kinds)).layouts;
      return layout?.on === 'plate'
        ? layout.strips.map(({ specimen, restart }) => `${specimen?.kind ?? 'away'} ${restart}`)
        : [];
    };
    expect(strips('2F macro-etch', '2F fillet break')).toEqual([
      'macro-etch false',
      'fillet break true',
      'away false',
    ]);
    expect(strips('2F fillet break')).toEqual(['fillet break true', 'away false']);
    expect(strips('2F macro-etch')).toEqual(['away false', 'macro-etch false', 'away false']);
  });
});

describe('a strap that does not go with its plunger', () => {
  const says = (typed: string, strap: number, plunger: number, system: System = 'us') =>
    Object.values(plungerWarning('ASME IX', typed, strap, plunger, system)).map(plain);
  it('is told in the reader’s system, from the table of the system it was read in', () => {
    expect(says('3/8', 3 / 8, 2)).toEqual([
      'Diameter of the mandrel: 2 in is too large for this strap: it stretches less than the test asks. The table gives 1-1/2 in.',
      'ASME IX, 2010 QW-466.1 (read), for steel of up to 50 ksi yield.',
    ]);
    expect(says('10 mm', 10 / 25.4, 50 / 25.4, 'metric')[0]).toMatch(
      /^Diameter of the mandrel: 50 mm is too large .* The table gives 38(\.1)? mm( to 40 mm)?\.$/,
    );
    expect(says('10 mm', 10 / 25.4, 50 / 25.4, 'metric')[1]).toMatch(/345 MPa yield\.$/);
    expect(says('3/8', 3 / 8, 1)[0]).toMatch(/^Diameter of the mandrel: 1 in is too small/);
    // A strap read in inches is judged by the row in inches, for a metric reader too.
    expect(says('3/8 in', 3 / 8, 1.5, 'metric')).toEqual([]);
    expect(says('10 mm', 10 / 25.4, 40 / 25.4)).toEqual([]);
  });
  it('is too thick for the table over 3/8 in, 10 mm', () => {
    expect(says('1/2 in', 1 / 2, 2)[0]).toBe(
      'Diameter of the mandrel: The table ends at a strap of 3/8 in: a thicker one is cut down to that, or bent on its side as a slice.',
    );
    expect(says('12 mm', 12 / 25.4, 2, 'metric')[0]).toContain('a strap of 10 mm');
  });
});

describe('what is typed', () => {
  it('gets the unit it was typed in, where it is a bare number of a size', () => {
    const state = {
      test: '3G',
      thickness: ' 3/8 ',
      strap: '10 mm',
      plunger: '1,5',
      outsideDiameter: '',
      stray: '7',
      deposits: [{ classification: 'E7018', thickness: '.5', layers: '3', stray: '1' }],
    };
    expect(withUnits(inputs, state, 'us')).toEqual({
      test: '3G',
      thickness: '3/8 in',
      strap: '10 mm',
      plunger: '1,5 in',
      outsideDiameter: '',
      stray: '7',
      deposits: [{ classification: 'E7018', thickness: '.5 in', layers: '3', stray: '1' }],
    });
    expect(withUnits(inputs, state, 'metric')).toMatchObject({
      thickness: '3/8 mm',
      plunger: '1,5 mm',
      deposits: [{ thickness: '.5 mm', layers: '3' }],
    });
    const half = { thickness: '1/2 i', plunger: '12a' };
    expect(withUnits(inputs, half, 'us')).toEqual(half);
  });
  it('leaves empty fields out of the address, and nothing else', () => {
    const query = sheetQuery(inputs, { test: '3G', thickness: '', day: '2026-03-02' });
    expect([...new URLSearchParams(query).keys()].every((key) => !key.includes('thickness'))).toBe(
      true,
    );
    expect(readSheet(inputs, query)).toEqual({ test: '3G', day: '2026-03-02' });
    expect(sheetQuery(inputs, {})).toBe('');
    expect(readSheet(inputs, '')).toBeUndefined();
  });
  it('may leave out pipe and edition, which a plate does not have', () => {
    for (const name of ['nps', 'schedule', 'edition'] as const)
      expect(inputs[name]).toMatchObject({ optional: true });
    expect(Object.keys(inputs)).toEqual([
      ...['code', 'test', 'form', 'nps', 'schedule', 'edition', 'thickness'],
      ...['outsideDiameter', 'deposits', 'strap', 'plunger', 'day'],
    ]);
  });
});
