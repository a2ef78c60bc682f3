/** Readings against limits. The limits are those of AWS D1.1 for a test coupon, as the exercises quote them. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { SheetPoint } from '../../../lib/booth/exercise-sheet.ts';
import { grade } from '../../../lib/grading/grade.ts';
import { ownLimitSaid } from '../../../lib/grading/limit-bound.ts';
import { type Rubric, standardPoint, standardRubric } from '../../../lib/grading/rubric.ts';
import { speak } from '../../../lib/text/say.ts';

// D1.1, 4.8.1 and 4.30.1 (2000), as quoted: undercut no deeper than 1/32 in, 1 mm.
const undercut: SheetPoint = {
  item: 'undercut',
  limit: 'No deeper than {1/32 in|1 mm} anywhere',
  amount: '1/32 in',
  metric: '1 mm',
  source: 'AWS D1.1',
  known: 'read',
};
// D1.1, fillet break and macroetch test: a leg of 5/16 in, 8 mm (from memory).
const size: SheetPoint = {
  item: 'size',
  limit: 'Both legs at least {5/16 in|8 mm}',
  amount: '5/16 in',
  metric: '8 mm',
  source: 'AWS D1.1',
  known: 'memory',
};
const cracks: SheetPoint = { item: 'cracks', limit: 'None, of any length', known: 'memory' };
const points = [size, undercut, cracks];

const withPoint = (item: string, part: object, passMark = 70): Rubric => ({
  passMark,
  points: { [item]: { ...standardPoint, ...part } },
});
const one = (
  point: SheetPoint,
  reading: string,
  rubric = standardRubric,
  system: 'us' | 'metric' = 'us',
) => grade([point], { [point.item]: reading }, rubric, system).points[0];

describe('a reading', () => {
  it.each([
    [undercut, '1/32', 'passed'],
    [undercut, '1/64 in', 'passed'],
    [undercut, '3/64', 'missed'],
    [undercut, '0', 'passed'],
    [undercut, '1/64; 3/64; 0', 'missed'],
    [size, '5/16; 3/8; 11/32', 'passed'],
    [size, '5/16; 19/64', 'missed'],
    [size, '8 mm', 'passed'],
    [size, '7.9 mm', 'missed'],
    [cracks, 'pass', 'passed'],
    [cracks, 'repeat', 'missed'],
    [cracks, '', 'open'],
    [cracks, 'perhaps', 'unread'],
    [undercut, 'deep', 'unread'],
    [undercut, '3 A', 'unread'],
    [undercut, '-1/32', 'unread'],
    [undercut, '1e999', 'unread'],
    [undercut, ' ; ', 'open'],
    [cracks, 'Passed', 'passed'],
    [cracks, 'no', 'missed'],
    [cracks, ' pass ', 'passed'],
    [cracks, 'x', 'passed'],
    [cracks, 'not good', 'unread'],
    [cracks, 'do not repeat', 'unread'],
    [undercut, '1/64; ; 1/32;', 'passed'],
    [cracks, 'passable', 'unread'],
    [cracks, 'no idea', 'unread'],
    [cracks, 'a good one', 'unread'],
  ] as const)('%o: %s', (point, reading, result) => {
    expect(one(point, reading)?.result).toBe(result);
  });
  it('is held against the metric figure that the source prints, for a metric reader', () => {
    expect(one(undercut, '1', standardRubric, 'metric')?.result).toBe('passed');
    expect(one(undercut, '1 mm', standardRubric, 'us')?.result).toBe('missed');
    expect(one(size, '7,9', standardRubric, 'metric')?.result).toBe('missed');
  });
  it('lies on the limit where a billionth parts them, and beyond it where more does', () => {
    const amps = { item: 'current', known: 'practice' } as const;
    const most: SheetPoint = { ...amps, limit: 'At most {125 A}', amount: '125 A' };
    const least: SheetPoint = { ...amps, limit: 'At least {125 A}', amount: '125 A' };
    expect(one(most, '125.0000001')?.result).toBe('passed');
    expect(one(most, '125.0000002')?.result).toBe('missed');
    expect(one(least, '124.9999999')?.result).toBe('passed');
    expect(one(least, '124.9999998')?.result).toBe('missed');
  });
  it('says that it was seen, and of one reading or the most of several what it is', () => {
    expect(one(cracks, 'pass')?.reason).toBe('Seen and good');
    expect(one(undercut, '0; 1/64')?.reason).toBe(
      'The most of 2 readings is {1/64 in}; at most {1/32 in} is asked',
    );
    expect(one(cracks, 'perhaps')?.reason).toBe('Write pass or repeat, not “perhaps”');
    expect(one(undercut, '-1')?.reason).toBe('A reading must not be negative');
    expect(one(undercut, 'deep')?.reason).toBe('The reading needs a number, not “deep”');
    expect(one(cracks, '')?.reason).toBe('Nothing written yet');
  });
  it('of pieces or in percent needs no unit of a system', () => {
    const stops = { item: 'stops', limit: 'No more than {2}', amount: '2', known: 'practice' };
    expect(one(stops as SheetPoint, '3')?.reason).toBe('Read {3 1}; at most {2} is asked');
    expect(one(stops as SheetPoint, '2', standardRubric, 'metric')?.result).toBe('passed');
  });
  it('cannot be held against a limit of ours that cannot be read, and the sheet says so', () => {
    const broken = {
      item: 'gap',
      limit: 'At most {much in}',
      amount: 'much in',
      known: 'practice',
    };
    expect(one(broken as SheetPoint, '1')).toMatchObject({
      result: 'unread',
      reason: 'The limit needs a number, not “much in”',
    });
  });
  it('says the worst of several, and the limit', () => {
    const reason = one(size, '5/16; 19/64')?.reason ?? '';
    expect(speak(reason, 'us')).toBe(
      'The least of 2 readings is 19/64\u00a0in; at least 5/16\u00a0in is asked',
    );
  });
  it('is told with as many figures as show on which side of the limit it lies', () => {
    const reason = one(undercut, '0.8 mm', standardRubric, 'us')?.reason ?? '';
    expect(speak(reason, 'us')).toBe('Read 0.0315\u00a0in; at most 1/32\u00a0in is asked');
  });
  it('is judged as a spreadsheet would: the worst alone decides', () => {
    const sixtyFourths = fc.array(fc.nat(64), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(sixtyFourths, (all) => {
        const typed = all.map((n) => `${n}/64`).join('; ');
        expect(one(undercut, typed)?.result).toBe(Math.max(...all) <= 2 ? 'passed' : 'missed');
        expect(one(size, typed)?.result).toBe(Math.min(...all) >= 20 ? 'passed' : 'missed');
      }),
    );
  });
  it('never throws, whatever is written', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), fc.string(), (reading, limit) => {
        const { points: judged } = grade(
          points,
          { size: reading, undercut: reading },
          withPoint('undercut', { limit }),
          'us',
        );
        for (const { reason } of judged) expect(speak(reason, 'metric')).not.toBe('');
      }),
    );
  });
});

describe('the shop’s own limit', () => {
  it('may be tighter, and then rules', () => {
    const tight = withPoint('undercut', { limit: '1/64 in' });
    expect(one(undercut, '1/32', tight)?.result).toBe('missed');
    expect(one(undercut, '1/64', tight)?.looser).toBeUndefined();
    expect(ownLimitSaid(undercut, '1/64', 'us')).toBeUndefined();
  });
  it('is never looser without saying so, whichever way the limit runs', () => {
    expect(one(undercut, '1/32', withPoint('undercut', { limit: '1/16 in' }))?.looser).toContain(
      'looser than {1/32 in} of AWS D1.1',
    );
    expect(one(size, '5/16', withPoint('size', { limit: '1/4 in' }))?.looser).toContain('looser');
    expect(ownLimitSaid(undercut, '2 mm', 'us')).toContain('looser');
  });
  it('that is the exercise’s own, or asks for more, is not looser', () => {
    for (const limit of ['1/32', '1/64', '0'])
      expect(ownLimitSaid(undercut, limit, 'us')).toBe(undefined);
    for (const limit of ['5/16', '3/8 in']) expect(ownLimitSaid(size, limit, 'us')).toBe(undefined);
    expect(ownLimitSaid(size, '9/32', 'us')).toContain('looser than {5/16 in} of AWS D1.1');
    expect(one(undercut, '1/32', withPoint('undercut', { limit: ' ' }))?.reason).toBe(
      'Read {1/32 in}; at most {1/32 in} is asked',
    );
  });
  it('that is looser is said of the whole coupon too', () => {
    const loose = withPoint('undercut', { limit: '1/16 in' });
    const verdict = grade([undercut], { undercut: '1/16' }, loose, 'us');
    expect(verdict).toMatchObject({ result: 'passed' });
    expect(verdict.reason).toContain('looser limits than the source: undercut');
  });
  it('that is negative or cannot be read is said for its field', () => {
    expect(ownLimitSaid(undercut, '-1/64', 'us')).toBe('The shop’s own limit must not be negative');
    expect(ownLimitSaid(undercut, 'tiny', 'us')).toMatch(/^The shop’s own limit needs a number/);
    expect(ownLimitSaid(undercut, '0', 'us')).toBeUndefined();
    expect(ownLimitSaid(undercut, ' ', 'us')).toBeUndefined();
    // Where the eye decides there is no limit to set.
    expect(ownLimitSaid(cracks, '1/4', 'us')).toBeUndefined();
  });
  it('that is looser than a custom of the trade says so', () => {
    const { source: _, ...custom } = undercut;
    expect(ownLimitSaid(custom, '1/16', 'us')).toContain('of {1/32 in}, common practice'.slice(3));
  });
  it('is shown in the reader’s units, as the exercise’s is', () => {
    const bead: SheetPoint = {
      item: 'current',
      limit: 'More than {125 A}',
      amount: '125 A',
      known: 'practice',
    };
    expect(speak(one(bead, '130')?.reason ?? '', 'metric')).toContain('130\u00a0A');
    const said = speak(one(undercut, '0.5', standardRubric, 'metric')?.reason ?? '', 'metric');
    expect(said).toBe('Read 0.5\u00a0mm; at most 1\u00a0mm is asked');
  });
  it('that cannot be read is told, and nothing passes by it', () => {
    expect(one(undercut, '1/64', withPoint('undercut', { limit: 'tiny' }))?.result).toBe('unread');
  });
});

describe('a coupon', () => {
  const good = { size: '5/16', undercut: '0', cracks: 'pass' };
  it('passes when every point does', () => {
    expect(grade(points, good, standardRubric, 'us')).toMatchObject({
      result: 'passed',
      total: 100,
    });
  });
  it('that misses a point by eye says what was asked', () => {
    const verdict = grade([cracks], { cracks: 'repeat' }, standardRubric, 'us');
    expect(verdict.points[0]?.reason).toBe('Seen, and not this: none, of any length');
  });
  it('passes at seventy of a hundred unless the shop says otherwise, and repeats under it', () => {
    const weights = (missed: number): Rubric => ({
      ...standardRubric,
      points: {
        undercut: { ...standardPoint, weight: missed, must: false },
        size: { ...standardPoint, weight: 100 - missed },
      },
    });
    const at = (missed: number) =>
      grade([size, undercut], { ...good, undercut: '1/8' }, weights(missed), 'us').result;
    expect(at(30)).toBe('passed');
    expect(at(31)).toBe('repeat');
  });
  it('says which points are still open, unread ones among them', () => {
    const { reason } = grade(points, { size: '1/2', undercut: 'deep' }, standardRubric, 'us');
    expect(reason).toBe('Still open: undercut, cracks');
    const unread = grade([undercut], { undercut: 'deep' }, standardRubric, 'us');
    expect(unread).toMatchObject({ result: 'waiting', total: 0 });
    const all = grade(points, good, standardRubric, 'us');
    expect(all.reason).toBe('Every point that must pass has passed');
    const low = grade(
      points,
      { ...good, undercut: '1' },
      withPoint('undercut', { must: false }, 90),
      'us',
    );
    expect(low.reason).toBe('The total is under the pass mark of 90 %');
  });
  it('waits as long as a point is open', () => {
    expect(grade(points, { ...good, cracks: '' }, standardRubric, 'us').result).toBe('waiting');
  });
  it('is repeated for one point that must pass, whatever the total', () => {
    const verdict = grade(
      points,
      { ...good, cracks: 'repeat' },
      withPoint('size', { weight: 98 }),
      'us',
    );
    expect(verdict.result).toBe('repeat');
    expect(verdict.total).toBe(99);
    expect(verdict.reason).toContain('cracks');
  });
  it('counts by weight where a point need not pass', () => {
    // Weights 1, 2 and 1: missing the second leaves half.
    const rubric = withPoint('undercut', { weight: 2, must: false }, 60);
    const verdict = grade(points, { ...good, undercut: '1/8' }, rubric, 'us');
    expect(verdict.total).toBe(50);
    expect(verdict.result).toBe('repeat');
    expect(
      grade(points, { ...good, undercut: '1/8' }, { ...rubric, passMark: 50 }, 'us').result,
    ).toBe('passed');
  });
  it('has no total where nothing has weight', () => {
    const none: Rubric = {
      passMark: 70,
      points: Object.fromEntries(points.map(({ item }) => [item, { ...standardPoint, weight: 0 }])),
    };
    expect(grade(points, good, none, 'us')).toMatchObject({ total: undefined, result: 'passed' });
  });
});
