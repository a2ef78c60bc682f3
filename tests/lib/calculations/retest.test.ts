import { expect, it } from 'vitest';
import { answer, type Typed } from '../../../lib/answer.ts';
import retest from '../../../lib/calculations/retest.ts';

const bend = 'bend, break or section';
const ask = (typed: Typed) => {
  const answered = answer(retest, typed);
  return answered.ok ? answered : { results: {}, because: [], ...answered };
};

it('counts coupons of one kind and position once, and plate and pipe apart', () => {
  const { results } = ask({
    code: 'AWS D1.1',
    when: 'at once',
    failed: [
      { test: '2G', form: 'plate', by: bend },
      { test: '2G', form: 'plate', by: 'looking' },
      { test: '2G', form: 'pipe', by: bend },
    ],
  });
  expect(results).toMatchObject({
    coupons: 4,
    toWeld: [
      { weld: '2G on plate', count: 2, pass: 'both, every specimen' },
      { weld: '2G on pipe', count: 2 },
    ],
  });
});

it.each([
  ['looking', 'picks one of them'],
  ['radiograph', '{12 in|300 mm}'],
])('tells what ASME IX adds when a coupon failed by %s', (by, words) => {
  const failed = [{ test: '6G', form: 'pipe', by }];
  const { because } = ask({ code: 'ASME IX', when: 'at once', failed });
  expect(because.map(({ text }) => text).join(' ')).toContain(words);
  const trained = ask({ code: 'ASME IX', when: 'after training', failed }).because;
  expect(trained.map(({ text }) => text).join(' ')).not.toContain(words);
});

it('asks what failed', () => {
  expect(ask({ code: 'ASME IX', when: 'at once', failed: [] })).toMatchObject({
    ok: false,
    problems: [{ field: 'failed' }],
  });
});

it('lets a requalification be tried at once under ASME IX, and after training under both', () => {
  const failed = [{ test: '3G', form: 'plate', by: bend }];
  const reason = 'after six months without the process';
  expect(ask({ code: 'ASME IX', when: 'at once', reason, failed })).toMatchObject({ ok: true });
  const trained = ask({ code: 'AWS D1.1', when: 'after training', reason, failed });
  expect(trained).toMatchObject({ ok: true, results: { coupons: 1 } });
  expect(trained.because.some(({ text }) => text.includes('{3/8 in|10 mm}'))).toBe(true);
});

it('tells what ASME IX adds where one coupon of several failed so', () => {
  const failed = [
    { test: '3G', form: 'plate', by: 'looking' },
    { test: '4G', form: 'plate', by: 'radiograph' },
  ];
  const said = ask({ code: 'ASME IX', when: 'at once', failed }).because.map(({ text }) => text);
  expect(said.join(' ')).toMatch(/Failed by looking: .*Failed by radiograph: /);
});

it('asks for every specimen of one coupon after training, and names the clause', () => {
  const failed = [{ test: '3G', form: 'plate', by: bend }];
  const after = (code: string) => ask({ code, when: 'after training', failed });
  for (const code of ['AWS D1.1', 'ASME IX'])
    expect(after(code).results).toEqual({
      coupons: 1,
      toWeld: [{ weld: '3G on plate', count: 1, pass: 'every specimen' }],
      needs: expect.stringMatching(/^(Evidence of further|Further) training or practice/),
    });
  // From memory: D1.1 clause 6.25.1 of 2020, 4.33.1 of 2015; ASME IX QW-321.
  const cites = (code: string, when: string) =>
    ask({ code, when, failed }).because.map(({ cite }) => `${cite?.source} ${cite?.at}`);
  expect(cites('AWS D1.1', 'at once')).toEqual([
    'aws-d1.1 2020 clause 6.25.1.1, 2015 clause 4.33.1.1',
  ]);
  expect(cites('AWS D1.1', 'after training')).toEqual([
    'aws-d1.1 2020 clause 6.25.1.2, 2015 clause 4.33.1.2',
  ]);
  expect(cites('ASME IX', 'at once')).toEqual(['asme-ix QW-321.2']);
  expect(cites('ASME IX', 'after training')).toEqual(['asme-ix QW-321.4']);
});
