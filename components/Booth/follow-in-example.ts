/** Works an example of the page again with the numbers of the booth. */
import { h, render } from 'preact';
import { type Answer, answer, type Given } from '../../lib/answer.ts';
import { fitBooth } from '../../lib/booth/fit-booth.ts';
import type { Input, Output } from '../../lib/calculation.ts';
import { loadCalculation } from '../../lib/calculations.ts';
import { speak } from '../../lib/text/say.ts';
import { slotTexts } from '../../lib/text/slot-texts.ts';
import { currentSystem } from '../Calculator/already-there.ts';
import Reasons from '../Reasons/Reasons.tsx';
import Both from '../Units/Both.tsx';
import { answerText } from '../WorkedExample/answer-text.ts';
import { givenText } from '../WorkedExample/given-text.ts';
import { linesOf } from '../WorkedExample/lines-of.ts';
import { neededOutputs } from '../WorkedExample/needed-outputs.ts';
import type { Place } from './BoothBanner.tsx';
import { boothHere } from './booth-here.ts';
import { calculationOf, givenOf, type Line, wantedOf } from './read-example.ts';

let count = 0;

/** Where the example is; `kept` where the booth's numbers do not touch it, or it cannot follow them. */
export async function followInExample(box: HTMLElement): Promise<Place | undefined> {
  const heading = box.querySelector('h3');
  if (!heading) return undefined;
  count += 1;
  heading.id ||= `booth-example-${count}`;
  const place = { kind: 'example', title: heading.textContent ?? '', id: heading.id } as const;
  return (await worked(box)) ? place : { ...place, kept: true };
}

async function worked(box: HTMLElement): Promise<boolean> {
  const link = box.querySelector<HTMLAnchorElement>('p:last-child > a');
  const id = calculationOf(link?.pathname ?? '');
  if (!id) return false;
  const calculation = await loadCalculation(id);
  const given = givenOf(calculation, linesOf(box, 'givens'));
  if (!given) return false;
  const fitted = fitBooth(id, calculation.inputs, boothHere().booth.numbers, given);
  const names = Object.keys(fitted);
  if (names.length === 0) return false;
  const answered = answer(calculation, { ...given, ...fitted });
  if (!answered.ok) {
    const [problem] = answered.problems;
    const why = problem ? speak(problem.text, currentSystem()) : '';
    tell(box, `This example keeps its own numbers. With those of the booth: ${why}.`);
    return false;
  }
  const outputs: Record<string, Output> = calculation.outputs;
  const wanted = wantedOf(
    calculation,
    linesOf(box, 'answers').map(({ label }) => label),
  );
  fill(
    box,
    'givens',
    Object.entries<Input>(calculation.inputs).flatMap(([name, input]): Line[] => {
      const one = answered.given[name];
      return one ? [{ label: input.label, shown: givenText(input, one as Given) }] : [];
    }),
  );
  fill(
    box,
    'answers',
    wanted.map((name): Line => {
      const output = outputs[name] as Output;
      const inSystem = (system: 'us' | 'metric') => answerText(output, name, answered, system);
      return { label: output.label, shown: { us: inSystem('us'), metric: inSystem('metric') } };
    }),
  );
  if (calculation.kind === 'formula') {
    const { fillLine } = await import('../Calculator/formula-lines.ts');
    const lines = box.querySelectorAll<HTMLElement>('.worked');
    for (const system of ['us', 'metric'] as const) {
      const texts = slotTexts(calculation, answered, system);
      for (const [place, name] of neededOutputs(calculation, wanted).entries())
        if (lines[place]) fillLine(lines[place], texts[name] ?? {}, system);
    }
  }
  await redraw(box, id, answered);
  const labels = names.map((name) => (calculation.inputs[name] as Input).label.toLowerCase());
  tell(
    box,
    `Worked with the numbers of the booth: ${labels.join(', ')}. The story keeps the standard ones.`,
  );
  return true;
}

/** Writes the rows anew: the booth may give what the example had left to its default. */
function fill(box: HTMLElement, list: 'givens' | 'answers', lines: readonly Line[]): void {
  const place = box.querySelector(`.${list}`);
  if (!place) return;
  place.replaceChildren();
  render(
    lines.map(({ label, shown }) =>
      h('div', { key: label }, h('dt', {}, label), h('dd', {}, h(Both, shown))),
    ),
    place,
  );
}

/** The drawing and the reasons, each where the standard ones stood. */
async function redraw(box: HTMLElement, id: string, one: Answer): Promise<void> {
  const answered = { ok: true, ...one } as const;
  const by = { us: answered, metric: answered };
  const figures = box.querySelectorAll('figure.drawing');
  if (figures.length > 0) {
    const { liveDrawing } = await import('../Drawing/live-drawing.ts');
    render(h(await liveDrawing(id), { by }), inPlaceOf(figures));
  }
  const reasons = box.querySelectorAll('ul.reasons');
  if (reasons.length > 0) render(h(Reasons, { by }), inPlaceOf(reasons));
}

function inPlaceOf(elements: NodeListOf<Element>): HTMLElement {
  const place = document.createElement('div');
  elements[0]?.before(place);
  for (const element of elements) element.remove();
  return place;
}

function tell(box: HTMLElement, text: string): void {
  const said = document.createElement('p');
  said.textContent = text;
  said.style.setProperty('font-weight', '600');
  box.querySelector('.givens')?.before(said);
}
