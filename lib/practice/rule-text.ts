/** A formula as a line of text, for a hint: with its symbols, and with numbers in their place. */
import type { Answer } from '../answer.ts';
import type { Formula, Input } from '../calculation.ts';
import { slotTexts } from '../text/slot-texts.ts';
import { substitute } from '../text/substitute.ts';
import type { System } from '../units.ts';

/** `E = 60 · U · I / (1000 · v)` */
export function ruleText(formula: Formula, want: string): string {
  const { symbol = want, formula: text } = formula.outputs[want] as Formula['outputs'][string];
  return `${plain(symbol)} = ${readable(substitute(text, (name) => symbolOf(formula, name)))}`;
}

/** What each symbol of the rule stands for: `U arc voltage`. */
export function legend(formula: Formula, want: string): string[] {
  const words = new Set(formula.outputs[want]?.formula.match(/[A-Za-z]\w*/g));
  const named: Record<string, { label?: string; name?: string }> = {
    ...formula.inputs,
    ...formula.constants,
    ...formula.outputs,
  };
  return Object.entries(named)
    .filter(([name]) => words.has(name))
    .map(([name, { label, name: called = label }]) => `${symbolOf(formula, name)}: ${called}`);
}

/** The rule with the reader's numbers, its answer left out. */
export function numbersText(
  formula: Formula,
  answer: Answer,
  want: string,
  system: System,
): string {
  const texts = slotTexts(formula, answer, system)[want] ?? {};
  return readable(formula.outputs[want]?.formula ?? '').replace(
    /([A-Za-z]\w*)([²³]?)/g,
    (all, name: string, power: string) => {
      const text = texts[name];
      return text === undefined ? all : power ? `(${text})${power}` : text;
    },
  );
}

function symbolOf({ inputs, constants, outputs }: Formula, name: string): string | undefined {
  const input = inputs[name] as Input | undefined;
  if (input) return 'symbol' in input ? plain(input.symbol) : name;
  const symbol = constants?.[name]?.symbol ?? outputs[name]?.symbol;
  return symbol === undefined ? undefined : plain(symbol);
}

const plain = (symbol: string): string => symbol.replace('_', '');

/** Signs of print for those of a program; a choice between two rules in words. */
function readable(text: string): string {
  const choice = /^(.+?) \? (.+?) : (.+)$/s.exec(text);
  if (choice && !/[?:]/.test(choice[1] ?? ''))
    return `${readable(choice[2] ?? '')}  (if ${readable(choice[1] ?? '')}),  else ${readable(choice[3] ?? '')}`;
  return text
    .replace(/equalText\((\w+), ?"([^"]*)"\)/g, '$1 is “$2”')
    .replace(/(sin|cos|tan)Degrees/g, '$1')
    .replaceAll('sqrt(', '√(')
    .replaceAll('^2', '²')
    .replaceAll('^3', '³')
    .replaceAll('<=', '≤')
    .replaceAll('>=', '≥')
    .replaceAll(' * ', ' · ')
    .replaceAll(' - ', ' − ')
    .replace(/\bpi\b/g, 'π');
}
