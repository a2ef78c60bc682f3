/** Problems of a calculation made for it: what is chosen, told, and left out. */
import { describe, expect, it } from 'vitest';
import { type Calculation, defineProcedure, type Output } from '../../../lib/calculation.ts';
import { makeProblem } from '../../../lib/practice/problem.ts';
import { namedIn, type Scene } from '../../../lib/practice/scene.ts';

const asked = {
  label: 'Left',
  obtain: '',
  symbol: 'n',
  unit: '1',
  limits: { why: '' },
  example: '1',
} as const;
const give = (result: (left: number) => unknown, output: Output) =>
  defineProcedure({
    title: '',
    summary: '',
    cite: [],
    inputs: {
      left: asked,
      kind: { label: 'Kind', obtain: '', choices: ['flat', 'round'], example: 'flat' },
    },
    outputs: { out: output },
    compute: ({ left }) => ({ out: result(left), because: [] }) as never,
  }) as unknown as Calculation;
const scene: Scene = {
  told: ['There are {left} of {kind} bars.'],
  asked: { out: 'How many?' },
  values: { left: ['0', '1'] },
};
const problems = (calculation: Calculation, one: Scene = scene) =>
  Array.from({ length: 40 }, (_, set) =>
    makeProblem({ id: 'small', calculation, scenes: [one] }, set, 0, 'us'),
  );
const answers = (calculation: Calculation) =>
  [...new Set(problems(calculation).map(({ found }) => found.results.out))].sort();
const count: Output = { label: 'Left', unit: '1' };

describe('a problem', () => {
  it('may be answered by a count of none, but by no measure of nothing and by nothing below it', () => {
    expect(answers(give((left) => left, count))).toEqual([0, 1]);
    expect(answers(give((left) => left, { label: 'Left', unit: 'in' }))).toEqual([1]);
    expect(answers(give((left) => left - 1, count))).toEqual([0]);
    expect(
      answers(give((left) => (left === 1 ? left : undefined), { ...count, optional: true })),
    ).toEqual([1]);
    expect(
      answers(give((left) => (left === 1 ? left : null), { ...count, optional: true })),
    ).toEqual([1]);
    expect(answers(give((left) => left === 1, { label: 'Fits', yes: true }))).toEqual([
      false,
      true,
    ]);
  });

  it('tells sizes in braces, words and what the scene says of a value as they are', () => {
    const told = problems(give((left) => left, count)).map(({ text }) => text);
    expect(new Set(told)).toEqual(
      new Set(
        ['0', '1'].flatMap((left) =>
          ['flat', 'round'].map((kind) => `There are {${left}} of ${kind} bars. How many?`),
        ),
      ),
    );
    const named: Scene = {
      ...scene,
      told: ['There are {left} bars.'],
      values: { left: { us: [{ typed: '1', said: 'one' }], metric: ['2'] }, kind: ['round'] },
    };
    const [first] = problems(
      give((left) => left, count),
      named,
    );
    expect(first).toMatchObject({
      text: 'There are one bars. How many?',
      typed: { left: '1', kind: 'round' },
      want: 'out',
    });
  });

  it('is not made where no value fits, and says for which', () => {
    const none = give(() => -1, count);
    expect(() =>
      makeProblem({ id: 'small', calculation: none, scenes: [scene] }, 7, 3, 'us'),
    ).toThrow('no problem can be made for small, set 7, number 3');
    const bare: Scene = { told: ['There are {kind} bars.'], asked: { out: 'How many?' } };
    expect(() =>
      makeProblem(
        { id: 'small', calculation: give((left) => left, count), scenes: [bare] },
        1,
        0,
        'us',
      ),
    ).toThrow(RangeError);
  });
});

it('the names in a text are those in braces that begin with a letter', () => {
  expect(namedIn('A {width} of {3/8 in} and {legA}, {run_out}, {2}')).toEqual([
    'width',
    'legA',
    'run_out',
  ]);
});
