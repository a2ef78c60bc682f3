import { Component } from 'preact';
import { type Answer, answer, type Given, type Typed } from '../../lib/answer.ts';
import type { Calculation, Input, Output } from '../../lib/calculation.ts';
import { toleranceText } from '../../lib/practice/asked.ts';
import { freshLike } from '../../lib/practice/fresh-like.ts';
import { slotTexts } from '../../lib/text/slot-texts.ts';
import type { System } from '../../lib/units.ts';
import { currentSystem } from '../Calculator/already-there.ts';
import { typedFor } from '../Calculator/entries.ts';
import AskedStep, { type Told } from '../Practice/AskedStep.tsx';
import Typeset from '../Practice/Typeset.tsx';
import { answerText } from './answer-text.ts';
import type { Way } from './fade-row.ts';
import { givenText } from './given-text.ts';

interface Props {
  calculation: Calculation;
  given: Typed;
  steps: readonly string[];
  way: Way;
  /** The lines that the page typeset, one block a step. */
  lines: readonly HTMLElement[];
}
interface State {
  system: System;
}

let examples = 0;

/** A worked example with steps left to the reader, in the reader's units. */
export default class OpenSteps extends Component<Props, State> {
  override state: State = { system: currentSystem() };
  private readonly id = `step-${++examples}`;
  private readonly seed = Math.floor(Math.random() * 1e6);

  override componentDidMount() {
    addEventListener('units', this.follow);
  }
  override componentWillUnmount() {
    removeEventListener('units', this.follow);
  }
  follow = () => this.setState({ system: currentSystem() });

  problem(system: System): { typed: Typed; found: Answer; fresh: boolean } | undefined {
    const { calculation, given, steps, way } = this.props;
    const fresh =
      way === 'fresh' ? freshLike(calculation, given, steps, this.seed, system) : undefined;
    if (fresh) return { ...fresh, fresh: true };
    const typed = typedFor(calculation.inputs, {}, given, system);
    const found = answer(calculation, typed);
    return found.ok ? { typed, found, fresh: false } : undefined;
  }

  override render({ calculation, steps, way, lines }: Props, { system }: State) {
    const problem = this.problem(system);
    if (!problem) return null;
    const { typed, found, fresh } = problem;
    const usable = steps.filter((name) => found.results[name] !== undefined);
    const open = { whole: 0, last: 1, two: 2, fresh: usable.length }[way];
    const firstOpen = Math.max(0, usable.length - open);
    const told: Told =
      calculation.kind === 'procedure' || way === 'fresh' ? 0 : way === 'last' ? 2 : 1;
    return (
      <div>
        {way === 'fresh' && this.givens(fresh, found, system)}
        {usable.map((name, place) => {
          const asked = { calculation, typed, results: found.results, want: name, system };
          const typeset = this.typeset(lines[steps.indexOf(name)], name, found, system);
          return place < firstOpen ? (
            <div key={name}>
              {typeset && <Typeset lines={[typeset.symbols, typeset.solved]} />}
              <p>
                {calculation.outputs[name]?.label}:{' '}
                <strong>
                  {answerText(calculation.outputs[name] as Output, name, found, system)}
                </strong>
              </p>
            </div>
          ) : (
            <AskedStep
              key={`${name}-${system}`}
              id={`${this.id}-${name}`}
              asked={asked}
              found={found}
              told={told}
              lines={typeset}
            />
          );
        })}
        <p class="quiet">{toleranceText}</p>
      </div>
    );
  }

  givens(fresh: boolean, found: Answer, system: System) {
    return (
      <>
        <p>
          {fresh
            ? 'The same question with other numbers:'
            : 'These numbers cannot be changed without changing the question, so here they are again:'}
        </p>
        <dl class="givens">
          {Object.entries<Input>(this.props.calculation.inputs).map(
            ([name, input]) =>
              found.given[name] && (
                <div key={name}>
                  <dt>{input.label}</dt>
                  <dd>{givenText(input, found.given[name] as Given)[system]}</dd>
                </div>
              ),
          )}
        </dl>
      </>
    );
  }

  /** The page's own lines with these numbers in their slots; the answer's slot empty, and filled. */
  typeset(block: HTMLElement | undefined, name: string, found: Answer, system: System) {
    const { calculation } = this.props;
    if (!block || calculation.kind !== 'formula') return undefined;
    const texts = slotTexts(calculation, found, system)[name] ?? {};
    const [symbols, numbers] = [...block.children].map((line) => line.cloneNode(true) as Element);
    const fill = (answer: string) => {
      const filled = numbers?.cloneNode(true) as Element | undefined;
      for (const slot of filled?.querySelectorAll<HTMLElement>('[data-in]') ?? []) {
        const key = slot.dataset.in ?? '';
        slot.textContent = key === `=${name}` ? answer : (texts[key] ?? '');
      }
      return filled;
    };
    return { symbols, numbers: fill('?'), solved: fill(texts[`=${name}`] ?? '') };
  }
}
