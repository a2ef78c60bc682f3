import { describe, expect, it } from 'vitest';
import { answer, type Typed } from '../../../lib/answer.ts';
import cableDrop from '../../../lib/calculations/cable-drop.ts';
import { quoted } from '../../../lib/text/quoted.ts';
import { speak } from '../../../lib/text/say.ts';

describe('quoted', () => {
  it('shows typed braces as parentheses, and cuts long text', () => {
    expect(quoted('{ }')).toBe('“( )”');
    expect(quoted('x'.repeat(30))).toBe(`“${'x'.repeat(24)}…”`);
  });

  const typed: Typed[] = [{ gauge: '{ }', length: '{9 in}' }, { '{3/8 in}': '1' }];
  it.each(typed)('keeps %j out of the quantities of our own sentences', (given) => {
    const answered = answer(cableDrop, given);
    if (answered.ok) throw new Error('it was answered');
    for (const { text } of answered.problems) {
      expect(text).not.toMatch(/“[^”]*[{}]/);
      expect(() => speak(text, 'metric')).not.toThrow();
    }
  });
});
