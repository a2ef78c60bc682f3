import { Component } from 'preact';
import type { Answer } from '../../lib/answer.ts';
import type { Output } from '../../lib/calculation.ts';
import { type Asked, unitAsked, wordsOf } from '../../lib/practice/asked.ts';
import { judge } from '../../lib/practice/judge.ts';
import { unitSign } from '../../lib/units.ts';
import { answerText } from '../WorkedExample/answer-text.ts';
import Typeset from './Typeset.tsx';
import Working from './Working.tsx';

/** How much of a step is shown: nothing, its rule, the numbers put in, the answer too. */
export type Told = 0 | 1 | 2 | 3;

export interface Props {
  id: string;
  asked: Asked;
  found: Answer;
  /** What is told before the reader asks for more. */
  told: Told;
  /** The typeset lines of the formula, where the page has them. */
  lines?: Record<'symbols' | 'numbers' | 'solved', Element | undefined> | undefined;
  /** Called once: `alone` when it was solved at any try before the answer was shown. */
  onDone?(alone: boolean): void;
}
interface State {
  text: string;
  said: string;
  told: Told;
  done: boolean;
}

const nextHint = ['Hint: the rule', 'Hint: the numbers put in', 'Show this step', ''] as const;

/** One step that the reader works: a field, what was said about it, and hints that come one by one. */
export default class AskedStep extends Component<Props, State> {
  override state: State = { text: '', said: '', told: this.props.told, done: false };

  check = async (event: Event) => {
    event.preventDefault();
    const { text } = this.state;
    try {
      const { right, said } = await judge(this.props.asked, text);
      if (right) this.done(said, true);
      else if (this.state.text === text) this.setState({ said });
    } catch {
      this.setState({
        said: 'That is not right. Which slip it is could not be fetched: go on when you are connected, or take the hint.',
      });
    }
  };
  hint = () => {
    const told = (this.state.told + 1) as Told;
    if (told === 3) this.done(`It is ${this.answer()}.`, false);
    else this.setState({ told, said: '' });
  };
  done(said: string, alone: boolean) {
    if (!this.state.done) this.props.onDone?.(alone);
    this.setState({ said, told: 3, done: true });
  }

  output = (): Output => this.props.asked.calculation.outputs[this.props.asked.want] as Output;
  answer = (): string =>
    answerText(this.output(), this.props.asked.want, this.props.found, this.props.asked.system);

  override render({ id, asked }: Props, { text, said, told, done }: State) {
    const words = wordsOf(asked);
    const unit = unitSign(unitAsked(asked));
    const type = (event: { currentTarget: { value: string } }) =>
      this.setState({ text: event.currentTarget.value });
    const field = { id, value: text, readOnly: done, 'aria-describedby': `${id}-said` };
    return (
      <form noValidate onSubmit={this.check}>
        {this.way(told)}
        <div class="field">
          <label for={id}>
            {this.output().label}
            {!words && unit !== '' && ` (${unit})`}
          </label>
          {words ? (
            <select {...field} disabled={done} onChange={type}>
              <option value="">choose</option>
              {words.map((word) => (
                <option key={word}>{word}</option>
              ))}
            </select>
          ) : (
            <input {...field} type="text" autocomplete="off" onInput={type} />
          )}
          <p id={`${id}-said`} role="status">
            {said}
          </p>
          {!done && (
            <p class="calculator-actions">
              <button type="submit">Check</button>
              <button type="button" onClick={this.hint}>
                {nextHint[told]}
              </button>
            </p>
          )}
        </div>
      </form>
    );
  }

  /** The typeset lines where the page has them, else the way in plain text. */
  way(told: Told) {
    const { asked, found, lines } = this.props;
    if (told === 0) return null;
    if (!lines || asked.calculation.kind === 'procedure')
      return <Working asked={asked} found={found} numbers={told > 1} />;
    const { symbols, numbers, solved } = lines;
    const second = told > 2 ? solved : told > 1 ? numbers : undefined;
    return <Typeset lines={[symbols, second]} />;
  }
}
