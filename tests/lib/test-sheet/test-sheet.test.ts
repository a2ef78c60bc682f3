/**
 * The test-day sheet: what it asks comes back from the address, and what it says of a test is what the
 * codes' tables say. AWS D1.1 2020 Table 6.10 as read; ASME IX QW-461.9 and QW-452 from memory.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { State } from '../../../lib/page-state.ts';
import { loadSheetRules, sheetInputs } from '../../../lib/test-sheet/sheet-rules.ts';
import {
  openingState,
  readSheet,
  sheetQuery,
  withUnits,
} from '../../../lib/test-sheet/sheet-state.ts';
import { testSheet } from '../../../lib/test-sheet/test-sheet.ts';

const rules = await loadSheetRules();
const inputs = sheetInputs(rules);
const made = (part: State) => testSheet(rules, { ...openingState('us'), ...part }, 'us');
const row = (sheet: ReturnType<typeof made>, label: string) => {
  const found = sheet.rows.find((one) => one.label.startsWith(label));
  return found?.cells.map((lines) => lines.join(' ').replaceAll('\u00a0', ' '));
};

describe('the state of the sheet', () => {
  it('comes back from the address as it went in', () => {
    const texts = fc.constantFrom('1/2 in', '3,5 mm', '2026-03-02', '6G', 'a & b = c', 'half');
    const rows = fc.array(fc.record({ classification: texts, thickness: texts }), {
      minLength: 1,
      maxLength: 4,
    });
    fc.assert(
      fc.property(texts, texts, rows, (thickness, day, deposits) => {
        const state = { thickness, day, deposits };
        expect(readSheet(inputs, sheetQuery(inputs, state))).toEqual(state);
      }),
    );
  });

  it('is nothing where the address is of something else', () => {
    expect(readSheet(inputs, '?units=metric&sheet.stray=1')).toBeUndefined();
  });

  it('keeps the unit in which a bare number was typed', () => {
    const state = withUnits(
      inputs,
      { thickness: '3/8', deposits: [{ thickness: '3', layers: '2' }] },
      'us',
    );
    expect(state).toEqual({ thickness: '3/8 in', deposits: [{ thickness: '3 in', layers: '2' }] });
    expect(withUnits(inputs, { thickness: '10', day: '2026-03-02' }, 'metric')).toEqual({
      thickness: '10 mm',
      day: '2026-03-02',
    });
  });
});

describe('both codes side by side', () => {
  it('NPS 6 Sch 80 is unlimited by the rows of 2020, with a caution, and no test pipe of older editions', () => {
    const pipe = { test: '6G', form: 'pipe', thickness: '', nps: '6', schedule: '80' };
    const now = made(pipe);
    expect(row(now, 'Thickness')?.[0]).toContain('unlimited');
    expect(now.cautions.join(' ')).toContain('NPS 6 Sch 120');
    const old = made({ ...pipe, edition: 'older, with named test pipes' });
    expect(old.problems.outsideDiameter).toContain('none of the test pipes');
    expect(old.coupon.map(({ text }) => text)).toContain('older, with named test pipes');
  });

  it('3G on plate: AWS D1.1 gives the horizontal groove, ASME IX does not, and the row says so', () => {
    const sheet = made({ test: '3G' });
    expect(row(sheet, 'Grooves')).toEqual(['flat, horizontal, vertical', 'flat, vertical']);
    expect(sheet.rows.find(({ label }) => label === 'Grooves')?.differ).toBe(true);
  });

  it('the chosen code stands first', () => {
    const sheet = made({ code: 'ASME IX', test: '3G' });
    expect(row(sheet, 'Grooves')).toEqual(['flat, vertical', 'flat, horizontal, vertical']);
  });

  it('a test that one code has no row for is told there and answered by the other', () => {
    const [structural, nine] = made({ test: '2G+3G+4G' }).columns;
    expect(structural?.problems[0]?.text).toContain('has no row under AWS D1.1');
    expect(nine?.problems).toEqual([]);
  });

  it('6G on NPS 6 schedule 80: E7018 over an E6010 root reaches 0.614 in under ASME IX', () => {
    const sheet = made({
      code: 'ASME IX',
      test: '6G',
      form: 'pipe',
      thickness: '',
      nps: '6',
      schedule: '80',
      deposits: [
        { classification: 'E6010', thickness: '1/8 in', backing: 'without backing' },
        { classification: 'E7018', thickness: '0.307 in', backing: 'with backing' },
      ],
    });
    expect(sheet.problems).toEqual({});
    expect(sheet.coupon.map(({ text }) => text)).toContain('6.625 in, NPS 6 Sch 80');
    expect(sheet.coupon[0]?.text).toBe('pipe, 0.432 in');
    expect(row(sheet, 'Deposit 2')?.[0]).toContain('0.614 in');
    expect(row(sheet, 'Where')?.[0]).toContain('quarter');
    expect(row(sheet, 'By eye')?.[0]).toContain('Incomplete penetration');
  });

  it('six months: the codes part by a day (both from memory)', () => {
    expect(row(made({ day: '2026-03-02' }), 'Six months')).toEqual([
      'good through 2026-09-02',
      'good through 2026-09-01',
    ]);
  });

  it('an immediate retest asks two of each under both codes (from memory)', () => {
    for (const cell of row(made({}), 'Retest at once') ?? []) expect(cell).toMatch(/^Two /);
  });

  it('3/8 in plate: face and root bends under AWS D1.1, each specimen named by its position', () => {
    expect(made({}).columns[0]?.specimens.map(({ id }) => id)).toEqual([
      '3G face bend 1',
      '3G root bend 1',
      '4G face bend 1',
      '4G root bend 1',
    ]);
  });

  it('a 3/8 in strap round a 1-1/2 in plunger: radius 3/4 in, strain 20 % (ASME IX QW-466.1)', () => {
    const texts = made({}).coupon.map(({ text }) => text.replaceAll('\u00a0', ' '));
    expect(texts).toContain('3/4 in');
    expect(texts.some((text) => /^20(\.0)? ?%$/.test(text))).toBe(true);
  });
});

describe('where the specimens are cut', () => {
  const cuts = (part: State) => made(part).columns[0]?.cuts;
  const pipe = (part: State) => ({
    form: 'pipe',
    thickness: '',
    nps: '6',
    schedule: '40',
    ...part,
  });
  const onClock = (part: State) =>
    cuts(pipe(part))?.layouts.map((one) =>
      one.on === 'pipe' ? one.places.map(({ specimen, hour }) => `${hour} ${specimen.kind}`) : [],
    );

  it('on each plate between two strips that are thrown away, every specimen once', () => {
    const found = cuts({})?.layouts ?? [];
    expect(
      found.map((one) =>
        one.on === 'plate' ? one.strips.map(({ specimen }) => specimen?.id ?? 'away') : [],
      ),
    ).toEqual([
      ['away', '3G face bend 1', '3G root bend 1', 'away'],
      ['away', '4G face bend 1', '4G root bend 1', 'away'],
    ]);
  });

  it('on a fillet plate: one end etched, the middle with its restart broken', () => {
    const [layout] = cuts({ test: '2F' })?.layouts ?? [];
    const strips = layout?.on === 'plate' ? layout.strips : [];
    expect(strips.map(({ specimen, restart }) => [specimen?.kind, restart])).toEqual([
      ['macro-etch', false],
      ['fillet break', true],
      [undefined, false],
    ]);
    expect(cuts({ code: 'ASME IX', test: '2F' })?.cite.at).toContain('QW-462.4');
  });

  it('on a pipe that stood still from all four quarters, opposite ones alike (from memory)', () => {
    expect(onClock({ test: '5G' })).toEqual([
      ['10.5 root bend', '1.5 face bend', '4.5 root bend', '7.5 face bend'],
    ]);
    expect(cuts(pipe({ test: '6G' }))?.notes.join(' ')).toContain('in doubt');
    const thick = onClock({ test: '6G', schedule: '120' })?.[0] ?? [];
    expect(new Set(thick)).toEqual(
      new Set(['1.5 side bend', '4.5 side bend', '7.5 side bend', '10.5 side bend']),
    );
  });

  it('on a rolled pipe two opposite each other, and of six on one pipe it names no place', () => {
    expect(onClock({ test: '2G' })).toEqual([['10.5 face bend', '4.5 root bend']]);
    const six = cuts(pipe({ code: 'ASME IX', test: '2G+5G' }));
    expect(six?.layouts).toEqual([]);
    expect(six?.notes.join(' ')).toContain('not known here');
    expect(onClock({ test: '2G+5G' })).toHaveLength(2);
  });
});

describe('strap and plunger', () => {
  it('go together without a word', () => {
    expect(made({}).warnings).toEqual({});
    expect(made({ code: 'ASME IX', strap: '10 mm', plunger: '40 mm' }).warnings).toEqual({});
  });

  it.each([
    ['2 in', /^Diameter of the mandrel: 2.in is too large .* gives 1-1\/2.in\.$/],
    ['1 in', /too small/],
  ])('a 3/8 in strap round %s is warned of, and worked out all the same', (plunger, says) => {
    const sheet = made({ code: 'ASME IX', plunger });
    expect(sheet.warnings.plunger).toMatch(says);
    expect(sheet.problems).toEqual({});
    expect(sheet.cautions.join()).toContain('QW-466.1 (read)');
    expect(sheet.coupon.map(({ label }) => label)).toContain('Strain of its skin');
  });

  it('a quarter-inch strap asks for 1 in under ASME IX', () => {
    expect(made({ code: 'ASME IX', strap: '1/4 in' }).warnings.plunger).toMatch(/gives 1.in/);
  });
});

describe('a coupon of 3/8 in and more under ASME IX', () => {
  it('may be bent on face and root instead up to 3/4 in (2010 QW-452.1, note 3)', () => {
    const cell = (thickness: string) =>
      row(made({ code: 'ASME IX', thickness }), 'Specimens')?.[0] ?? '';
    expect(cell('3/8 in')).toContain('note 3');
    expect(cell('18 mm')).toContain('note 3');
    expect(cell('3/4 in')).not.toContain('note 3');
    expect(cell('19 mm')).not.toContain('note 3');
    expect(cell('1/4 in')).not.toContain('note 3');
  });
});

describe('where it is known from', () => {
  it('names the clauses of its own code alone, those of judging and retest too', () => {
    const [structural, nine] = row(made({ day: '2026-03-02' }), 'Known from') ?? [];
    for (const clause of ['QW-322.1', 'QW-321.2', 'QW-163']) expect(nine).toContain(clause);
    expect(nine).not.toContain('D1.1');
    expect(structural).toContain('6.2.3.1');
    expect(structural).not.toContain('QW-');
  });
});

describe('what cannot be read', () => {
  it('is told by its field and stops nothing else', () => {
    const sheet = made({
      thickness: 'thick',
      day: '2026-02-30',
      plunger: '',
      deposits: [{ thickness: 'x' }],
    });
    expect(Object.keys(sheet.problems)).toEqual(
      expect.arrayContaining(['thickness', 'day', 'plunger', 'deposits.1.thickness']),
    );
    expect(sheet.problems.day).toMatch(/^Day of the test/);
  });

  it('a schedule that no table prints is told by the schedule', () => {
    const sheet = made({ form: 'pipe', thickness: '', nps: '1/2', schedule: '120' });
    expect(sheet.problems.schedule).toContain('no schedule 120');
  });
});
