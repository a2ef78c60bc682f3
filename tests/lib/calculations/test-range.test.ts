/**
 * What a welder's test covers, against the codes' tables in their own short hand: AWS D1.1:2020
 * Tables 6.10, 6.11, 10.12 and 10.13, ASME IX QW-452 and QW-461.9. From memory unless a check of
 * `content/checks/test-range.yaml` says read.
 */
import { describe, expect, it } from 'vitest';
import { answer, type Typed } from '../../../lib/answer.ts';
import testRange from '../../../lib/calculations/test-range.ts';
import { speak } from '../../../lib/text/say.ts';

function ask(code: string, form: string, test: string, more: Typed = {}) {
  const pipe = form === 'pipe' ? { outsideDiameter: '6.625 in' } : {};
  return answer(testRange, { code, form, test, thickness: '1/2 in', ...pipe, ...more });
}
function range(code: string, form: string, test: string, more: Typed = {}) {
  const found = ask(code, form, test, more);
  if (!found.ok) throw new Error(found.problems[0]?.text);
  return found.results as Record<string, unknown>;
}
const names = { F: 'flat', H: 'horizontal', V: 'vertical', O: 'overhead' } as const;
const positions = (short: string) =>
  [...short].map((letter) => names[letter as keyof typeof names]).join(', ') || 'none';
const inch = (value: number) => ({ us: value });

/** Test, then grooves and fillets that it covers. */
const printed: [code: string, form: string, rows: string][] = [
  [
    'AWS D1.1',
    'plate',
    '1G F FH|2G FH FH|3G FHV FHV|4G FO FHO|3G+4G FHVO FHVO|1F - F|2F - FH|3F - FHV|4F - FHO|3F+4F - FHVO',
  ],
  [
    'AWS D1.1',
    'pipe',
    '1G F FH|2G FH FH|5G FVO FVO|6G FHVO FHVO|2G+5G FHVO FHVO|1F - F|2F - FH|4F - FHO|5F - FHVO',
  ],
  [
    'ASME IX',
    'plate',
    '1G F F|2G FH FH|3G FV FHV|4G FO FHO|3G+4G FVO FHVO|2G+3G+4G FHVO FHVO|1F - F|2F - FH|3F - FHV|4F - FHO|3F+4F - FHVO',
  ],
  [
    'ASME IX',
    'pipe',
    '1G F F|2G FH FH|5G FVO FHVO|6G FHVO FHVO|2G+5G FHVO FHVO|1F - F|2F - FH|4F - FHO|5F - FHVO',
  ],
];
const rows = printed.flatMap(([code, form, all]) =>
  all.split('|').map((row) => [code, form, ...row.split(' ')] as const),
);

describe('positions', () => {
  it.each(rows)(
    '%s on %s: %s covers grooves %s and fillets %s',
    (code, form, test, groove = '', fillet = '') => {
      expect(range(code, form, test)).toMatchObject({
        positionsGroove: positions(groove.replace('-', '')),
        positionsFillet: positions(fillet.replace('-', '')),
      });
    },
  );

  it.each([
    ['AWS D1.1', 'pipe', '3G'],
    ['AWS D1.1', 'plate', '5G'],
    ['AWS D1.1', 'plate', '2G+3G+4G'],
    ['ASME IX', 'pipe', '3F'],
  ])('%s on %s has no row for %s, and says which it has', (code, form, test) => {
    const found = ask(code, form, test);
    expect(found.ok || found.problems[0]?.text).toMatch(/has no row under .*; there are 1G, 2G/);
  });
});

describe('thickness and diameter under AWS D1.1', () => {
  const of = (form: string, test: string, thickness: string, outsideDiameter?: string) =>
    range('AWS D1.1', form, test, { thickness, ...(outsideDiameter && { outsideDiameter }) });

  it.each([
    ['3/8 in', { us: 1 / 8, metric: 3 }, { us: 3 / 4, metric: 20 }],
    ['10 mm', { us: 1 / 8, metric: 3 }, { us: 3 / 4, metric: 20 }],
    ['1/2 in', { us: 1 / 8 }, inch(1)],
    ['0.99 in', { us: 1 / 8 }, inch(1.98)],
    ['0.38 in', { us: 1 / 8 }, inch(0.76)],
    ['9.5 mm', { metric: 3 }, { metric: 20 }],
    ['10.1 mm', { metric: 3 }, { metric: 20.2 }],
    ['12 mm', { metric: 3 }, { metric: 24 }],
    ['1 in', { us: 1 / 8 }, 'unlimited'],
    ['25 mm', { metric: 3 }, 'unlimited'],
    ['24.9 mm', { metric: 3 }, { metric: 49.8 }],
  ])('a plate groove of %s', (thickness, from, to) => {
    const found = of('plate', '3G', thickness);
    expect(found.thicknessFrom).toMatchObject(from);
    if (typeof to === 'string') expect(found.thicknessTo).toBe(to);
    else expect(found.thicknessTo).toMatchObject(to);
    expect(found).toMatchObject({ diameterFrom: { us: 24, metric: 600 }, diameterTo: 'unlimited' });
  });

  it.each(['0.36 in', '9.3 mm'])(
    'no plate groove of %s: the plate tests start at 3/8 in',
    (thickness) => {
      const found = ask('AWS D1.1', 'plate', '3G', { thickness });
      expect(found.ok || found.problems[0]).toMatchObject({ field: 'thickness' });
      expect(ask('AWS D1.1', 'plate', '3F', { thickness }).ok).toBe(true);
      expect(ask('ASME IX', 'plate', '3G', { thickness }).ok).toBe(true);
    },
  );

  it('a fillet from 1/8 in up, on any plate and on pipe from the size that was welded', () => {
    expect(of('plate', '2F', '3/8 in')).toMatchObject({
      thicknessFrom: { us: 1 / 8, metric: 3 },
      thicknessTo: 'unlimited',
      diameterFrom: 'no minimum',
      diameterTo: 'unlimited',
    });
    expect(of('pipe', '5F', '0.28 in', '6.625 in')).toMatchObject({
      thicknessFrom: { us: 1 / 8, metric: 3 },
      thicknessTo: 'unlimited',
      diameterFrom: { us: 6.625, metric: expect.closeTo(168.275, 9) },
    });
  });

  it.each(['2.375 in', '4.5 in', '60.3 mm', '114.3 mm'])(
    'a pipe of %s, NPS 4 or less',
    (diameter) => {
      expect(of('pipe', '6G', '0.218 in', diameter)).toMatchObject({
        thicknessFrom: { us: 1 / 8, metric: 3 },
        thicknessTo: { us: 3 / 4, metric: 20 },
        diameterFrom: { us: 3 / 4, metric: 20 },
        diameterTo: { us: 4, metric: 100 },
      });
    },
  );

  it.each(['4.51 in', '114.5 mm'])('a pipe of %s, over NPS 4', (diameter) => {
    expect(of('pipe', '6G', '0.5 in', diameter)).toMatchObject({
      thicknessFrom: { us: 3 / 16, metric: 5 },
      thicknessTo: 'unlimited',
      diameterFrom: { us: 4, metric: 100 },
      diameterTo: 'unlimited',
    });
  });

  it.each([
    ['3/8 in', { us: 1 / 8, metric: 3 }, { us: 3 / 4, metric: 20 }],
    ['0.376 in', { us: 3 / 16, metric: 5 }, 'unlimited'],
    ['10 mm', { us: 1 / 8, metric: 3 }, { us: 3 / 4, metric: 20 }],
    ['10.1 mm', { us: 3 / 16, metric: 5 }, 'unlimited'],
  ])('a pipe over NPS 4 with a wall of %s', (wall, thicknessFrom, thicknessTo) => {
    expect(of('pipe', '6G', wall, '6.625 in')).toMatchObject({ thicknessFrom, thicknessTo });
  });

  it.each([
    ['6.625 in', { us: 4, metric: 100 }],
    ['8 in', { us: 4, metric: 100 }],
    ['12.75 in', { us: 6.375 }],
    ['323.9 mm', { metric: 161.95 }],
  ])('a pipe of %s: half its diameter, or 4 in', (diameter, from) => {
    const found = of('pipe', '6G', '1/2 in', diameter);
    expect(found.diameterFrom).toMatchObject(from);
    expect(found.diameterTo).toBe('unlimited');
  });
});

describe('thickness and diameter under ASME IX', () => {
  it.each([
    ['0.84 in', { us: 0.84 }],
    ['0.99 in', { us: 0.99 }],
    ['1 in', { us: 1, metric: 25 }],
    ['2.875 in', { us: 1, metric: 25 }],
    ['2.88 in', { us: 2.875, metric: 73 }],
    ['24.9 mm', { metric: 24.9 }],
    ['25 mm', { us: 1, metric: 25 }],
    ['73 mm', { us: 1, metric: 25 }],
    ['73.1 mm', { us: 2.875, metric: 73 }],
  ])('a pipe of %s', (outsideDiameter, from) => {
    const found = range('ASME IX', 'pipe', '6G', { outsideDiameter });
    expect(found.diameterFrom).toMatchObject(from);
    expect(found.diameterTo).toBe('unlimited');
  });

  it('a plate groove counts for pipe from 2-7/8 in', () => {
    expect(range('ASME IX', 'plate', '2G').diameterFrom).toEqual({ us: 2.875, metric: 73 });
  });

  it('says at exactly 2-7/8 in that summaries differ', () => {
    const said = (outsideDiameter: string) => {
      const found = ask('ASME IX', 'pipe', '6G', { outsideDiameter });
      return found.ok ? found.because.map(({ text }) => text).join(' ') : '';
    };
    expect(said('2.875 in')).toContain('summaries differ');
    expect(said('2.5 in')).toMatch(/From \{1 in\|25 mm\} to/);
    expect(said('3.5 in')).toMatch(/Over \{2-7\/8 in\|73 mm\}/);
    expect(said('0.84 in')).toMatch(/Under \{1 in\|25 mm\}: from the size/);
  });

  it.each([
    ['0.49 in', '3', { us: 0.98 }],
    ['1/2 in', '3', 'unlimited'],
    ['1/2 in', '2', { us: 1 }],
    ['1/2 in', undefined, { us: 1 }],
    ['13 mm', '3', 'unlimited'],
    ['12.9 mm', '3', { metric: 25.8 }],
    ['1/4 in', '9', { us: 0.5 }],
  ])('a deposit of %s in %s layers', (thickness, layers, to) => {
    const found = range('ASME IX', 'plate', '3G', { thickness, layers });
    expect(found.thicknessFrom).toBe('no minimum');
    if (typeof to === 'string') expect(found.thicknessTo).toBe(to);
    else expect(found.thicknessTo).toMatchObject(to);
  });

  it('leaves the thickness to the deposits where two fillers were used, and a fillet has no limit', () => {
    const one = { classification: 'E7018', thickness: '1/4 in', backing: 'with backing' };
    expect(range('ASME IX', 'plate', '3G', { deposits: [one, one] }).thicknessTo).toBe(
      'see deposits',
    );
    expect(range('ASME IX', 'plate', '3G', { deposits: [one] }).thicknessTo).toMatchObject({
      us: 0.5,
    });
    expect(range('ASME IX', 'pipe', '2F')).toMatchObject({
      thicknessFrom: 'no minimum',
      thicknessTo: 'unlimited',
    });
  });

  it.each([
    ['3/16 in', 'no minimum', 'unlimited'],
    ['5 mm', 'no minimum', 'unlimited'],
    ['0.18 in', inch(0.18), inch(0.36)],
    ['4.9 mm', { metric: 4.9 }, { metric: 9.8 }],
  ])('a fillet on plate of %s, and pipe from 2-7/8 in (QW-452.5)', (thickness, from, to) => {
    const found = range('ASME IX', 'plate', '2F', { thickness });
    expect(found).toMatchObject({ thicknessFrom: from, thicknessTo: to });
    expect(found).toMatchObject({
      diameterFrom: { us: 2.875, metric: 73 },
      diameterTo: 'unlimited',
    });
  });
});

describe('specimens', () => {
  const cut = (code: string, form: string, test: string, thickness: string) =>
    (range(code, form, test, { thickness }).specimens as { specimen: string; count: number }[])
      .map(({ specimen, count }) => `${count} ${specimen}`)
      .join(', ');
  it.each([
    ['AWS D1.1', 'plate', '3G', '3/8 in', '1 face bend, 1 root bend'],
    ['AWS D1.1', 'plate', '3G', '1/2 in', '2 side bend'],
    ['AWS D1.1', 'plate', '3G', '10 mm', '1 face bend, 1 root bend'],
    ['AWS D1.1', 'plate', '3G+4G', '1 in', '4 side bend'],
    ['AWS D1.1', 'plate', '3G+4G', '3/8 in', '2 face bend, 2 root bend'],
    ['AWS D1.1', 'pipe', '2G', '0.28 in', '1 face bend, 1 root bend'],
    ['AWS D1.1', 'pipe', '6G', '0.28 in', '2 face bend, 2 root bend'],
    ['AWS D1.1', 'pipe', '6G', '0.432 in', '4 side bend'],
    ['AWS D1.1', 'pipe', '2G+5G', '0.28 in', '3 face bend, 3 root bend'],
    ['ASME IX', 'plate', '3G', '0.37 in', '1 face bend, 1 root bend'],
    ['ASME IX', 'plate', '3G', '3/8 in', '2 side bend'],
    ['ASME IX', 'plate', '3G', '9.9 mm', '1 face bend, 1 root bend'],
    ['ASME IX', 'plate', '3G', '10 mm', '2 side bend'],
    ['ASME IX', 'pipe', '5G', '0.28 in', '2 face bend, 2 root bend'],
    ['ASME IX', 'pipe', '6G', '0.432 in', '4 side bend'],
    ['ASME IX', 'pipe', '2G+5G', '0.28 in', '3 face bend, 3 root bend'],
    ['ASME IX', 'pipe', '2G+5G', '0.432 in', '6 side bend'],
    ['AWS D1.1', 'plate', '2F', '1/2 in', '1 fillet break, 1 macro-etch'],
    ['AWS D1.1', 'plate', '3F+4F', '1/2 in', '2 fillet break, 2 macro-etch'],
  ])('%s on %s, %s in %s: %s', (code, form, test, thickness, specimens) => {
    expect(cut(code, form, test, thickness)).toBe(specimens);
  });

  it.each([
    ['2G', '1 face bend, 1 root bend'],
    ['6G', '2 face bend, 2 root bend'],
  ])('AWS D1.1 on pipe of NPS 4 or less, whatever its wall, %s: %s', (test, specimens) => {
    const found = range('AWS D1.1', 'pipe', test, {
      thickness: '0.531 in',
      outsideDiameter: '4.5 in',
    });
    const rows = found.specimens as { specimen: string; count: number }[];
    expect(rows.map(({ specimen, count }) => `${count} ${specimen}`).join(', ')).toBe(specimens);
  });
});

describe('fillers', () => {
  const filler = (code: string, classification: string) =>
    (range(code, 'plate', '3G', { classification }).fillers as Record<string, unknown>[])[0];
  it('cover the lower groups, under ASME IX with backing', () => {
    expect(filler('AWS D1.1', 'E7018')).toMatchObject({
      fNumber: 'F4',
      covers: 'F1, F2, F3',
      reach: 'by the coupon',
      own: undefined,
    });
    expect(filler('AWS D1.1', 'E6020')?.covers).toBe('no other group');
    expect(filler('ASME IX', 'E6010')).toMatchObject({
      fNumber: 'F3',
      covers: 'F1, F2 with backing',
      reach: 'twice its deposit',
      own: 1,
    });
    expect(filler('ASME IX', 'E6020')?.covers).toBe('no other group');
  });
  it('have no limit where half an inch was laid in three layers', () => {
    const [one] = range('ASME IX', 'plate', '3G', { layers: '3' }).fillers as Record<
      string,
      unknown
    >[];
    expect(one).toMatchObject({ own: undefined, together: undefined, reach: 'any thickness' });
  });
  it('reach on over their own root where the higher group has no limit', () => {
    const root = {
      classification: 'E6010',
      thickness: '1/8 in',
      layers: '1',
      backing: 'without backing',
    };
    const fill = {
      classification: 'E7018',
      thickness: '1/2 in',
      layers: '3',
      backing: 'with backing',
    };
    const [first, second] = range('ASME IX', 'plate', '3G', { deposits: [root, fill] })
      .fillers as Record<string, unknown>[];
    expect(first).toMatchObject({
      own: 0.25,
      together: undefined,
      reach: 'any, over its own root',
    });
    expect(second).toMatchObject({ reach: 'any thickness' });
  });
});

describe('what is said', () => {
  const said = (code: string, form: string, test: string, more: Typed = {}) => {
    const found = ask(code, form, test, more);
    return found.ok ? found.because.map(({ text }) => speak(text, 'us')).join('\n') : '';
  };
  it('warns that backing throughout qualifies no open root, and only then', () => {
    const warning = 'an open root is not qualified';
    expect(said('ASME IX', 'plate', '3G')).toContain(warning);
    expect(said('ASME IX', 'plate', '3G', { backing: 'without backing' })).not.toContain(warning);
    expect(said('ASME IX', 'plate', '3F')).not.toContain(warning);
  });
  it('tells where the codes differ on 3G plate', () => {
    expect(said('AWS D1.1', 'plate', '3G')).toContain('The codes differ here');
    expect(said('AWS D1.1', 'plate', '4G')).not.toContain('The codes differ here');
  });
  it('tells what a plate test covers on pipe', () => {
    expect(said('AWS D1.1', 'plate', '3G')).toMatch(/on pipe of 24.in outside diameter or more/);
    expect(said('ASME IX', 'plate', '2G')).toMatch(/flat, horizontal, on pipe of 2-7\/8.in/);
    expect(said('AWS D1.1', 'plate', '2F')).not.toMatch(/on pipe of/);
  });
  it('tells which edition a small and a heavy pipe depend on', () => {
    expect(said('AWS D1.1', 'pipe', '6G', { outsideDiameter: '2.375 in' })).toContain(
      'named the test pipes',
    );
    expect(said('AWS D1.1', 'pipe', '6G', { thickness: '0.432 in' })).toContain(
      'does not qualify unlimited',
    );
    expect(said('AWS D1.1', 'pipe', '6G', { thickness: '0.28 in' })).not.toContain(
      'does not qualify unlimited',
    );
  });
  it('asks for the diameter of a pipe', () => {
    const found = ask('ASME IX', 'pipe', '6G', { outsideDiameter: '' });
    expect(found.ok || found.problems[0]).toEqual({
      field: 'outsideDiameter',
      text: 'Outside diameter of the pipe is missing',
    });
  });
});
