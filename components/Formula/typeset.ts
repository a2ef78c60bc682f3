/**
 * The lines of a formula as MathML, made at build. The line with numbers has a slot for each value,
 * once a unit system, that a live form fills: `<mtext data-in="current" class="us">`. There is no
 * parser in the reader's browser, and no third statement of the formula.
 */
import katex from 'katex';
import type { Formula } from '../../lib/calculation.ts';
import { symbolTex } from './symbol-tex.ts';
import { texOf } from './tex.ts';

export interface TypesetLines {
  /** The name of the output that the lines lead to. */
  output: string;
  symbols: string;
  numbers: string;
}

export function typeset(formula: Formula): TypesetLines[] {
  const symbols = new Map<string, string>();
  for (const [name, input] of Object.entries(formula.inputs))
    symbols.set(name, 'symbol' in input ? symbolTex(input.symbol) : `\\text{${name}}`);
  for (const [name, { symbol }] of Object.entries(formula.constants ?? {}))
    symbols.set(name, symbolTex(symbol));
  return Object.entries(formula.outputs).map(([output, { formula: text, symbol }]) => {
    const own = symbolTex(symbol ?? output);
    const line = {
      output,
      symbols: mathml(`${own} = ${texOf(text, (name) => symbols.get(name) ?? name)}`),
      numbers: slots(
        mathml(
          `\\phantom{${own}} = ${texOf(text, (name) => `\\text{@${name}@}`)} = \\text{@=${output}@}`,
        ),
      ),
    };
    symbols.set(output, own);
    return line;
  });
}

const mathml = (tex: string): string =>
  katex
    .renderToString(tex, {
      displayMode: true,
      output: 'mathml',
      throwOnError: true,
      strict: 'error',
      trust: false,
    })
    .replace(/^<span class="katex">|<\/span>$/g, '')
    .replace(/<annotation[\s\S]*?<\/annotation>/g, '');

// KaTeX runs texts that touch into one, so a slot may share its <mtext> with a space or a word.
const slots = (html: string): string =>
  html.replace(
    /<mtext>([^<@]*)@(=?\w+)@([^<@]*)<\/mtext>/g,
    (_, before: string, name: string, after: string) =>
      `${words(before)}<mtext class="us" data-in="${name}"></mtext><mtext class="metric" data-in="${name}"></mtext>${words(after)}`,
  );

const words = (text: string): string => (text === '' ? '' : `<mtext>${text}</mtext>`);
