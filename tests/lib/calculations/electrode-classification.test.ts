/** AWS A5.1 Table 1 and a handbook's table of the last digits, written out electrode by electrode. */
import { describe, expect, it } from 'vitest';
import { answer } from '../../../lib/answer.ts';
import electrodeClassification from '../../../lib/calculations/electrode-classification.ts';

const read = (classification: string, designator = 'none') => {
  const found = answer(electrodeClassification, { classification, designator });
  if (!found.ok) throw new Error(found.problems[0]?.text);
  return found;
};
const all = 'flat, horizontal, vertical and overhead';
const level = 'flat, and fillets in the horizontal position';
const strengths = { 60: { us: 60, metric: 430 }, 70: { us: 70, metric: 490 } };

// Coverings and currents as AWS A5.1 Table 1 has them; E6019 and E7048 from memory.
const rows = `
  E7018    all    low-hydrogen  AC or DCEP                        F4
  E6010    all    cellulose     DCEP                              F3
  E6011    all    cellulose     AC or DCEP                        F3
  E6012    all    titania       AC or DCEN                        F2
  E6013    all    titania       AC, or DC with either polarity    F2
  E6019    all    iron oxide    AC, or DC with either polarity    F2
  E6020    level  iron oxide    AC or DCEN                        F1
  E6027    level  iron oxide    AC, or DC with either polarity    F1
  E7014    all    titania       AC, or DC with either polarity    F2
  E7015    all    low-hydrogen  DCEP                              F4
  E7016    all    low-hydrogen  AC or DCEP                        F4
  E7016-1  all    low-hydrogen  AC or DCEP                        F4
  E7018-1  all    low-hydrogen  AC or DCEP                        F4
  E7018M   all    low-hydrogen  DCEP                              F4
  E7024    level  titania       AC, or DC with either polarity    F1
  E7024-1  level  titania       AC, or DC with either polarity    F1
  E7027    level  iron oxide    AC, or DC with either polarity    F1
  E7028    level  low-hydrogen  AC or DCEP                        F1
  E7048    down   low-hydrogen  AC or DCEP                        F4`
  .trim()
  .split('\n')
  .map((line) => line.trim().split(/\s{2,}/));

describe('electrode-classification', () => {
  it('knows each electrode that can be chosen', () => {
    const { choices } = electrodeClassification.inputs.classification;
    expect(rows.map(([name]) => name)).toEqual(choices);
  });

  it.each(rows)('%s: %s, %s, %s, %s', (name = '', position, covering, current, fNumber) => {
    const { results, because } = read(name);
    expect(results).toMatchObject({
      tensileStrength: strengths[name.slice(1, 3) as '60' | '70'],
      positions: { all, level, down: 'flat, horizontal, overhead, and vertical downhill' }[
        position as 'all'
      ],
      covering: expect.stringMatching(new RegExp(`^${covering}`)),
      current,
      lowHydrogen: covering === 'low-hydrogen',
      hydrogenLimit: undefined,
      fNumber,
    });
    const texts = because.map(({ text }) => text);
    expect(texts[0]).toMatch(new RegExp(`^E: an electrode\\. ${name.slice(1, 3)}: .*at least \\{`));
    expect(texts[1]).toBe(`${name[3]}: ${results.positions}.`);
    expect(texts[2]).toBe(`${name.slice(3, 5)}, read together: ${results.covering}; ${current}.`);
    expect(texts.some((text) => text.startsWith(`${fNumber}: coverings`))).toBe(true);
    // Table 1, footnote (from memory): out of position up to 5/32 in low-hydrogen, 3/16 in others.
    const caution = because.filter(({ kind }) => kind === 'caution').map(({ text }) => text);
    const size = covering === 'low-hydrogen' ? '{5/32 in|4 mm}' : '{3/16 in|5 mm}';
    if (position === 'all') expect(caution.join()).toContain(size);
    else expect(caution).toEqual([]);
  });

  // AWS A5.1, optional designators (read): H and a figure in ml for 100 g, R for the moisture test.
  it.each([
    ['none', undefined, false],
    ['R', undefined, true],
    ['H4', 4, false],
    ['H4R', 4, true],
    ['H8', 8, false],
    ['H8R', 8, true],
    ['H16', 16, false],
    ['H16R', 16, true],
  ] as const)('reads %s as a limit of %s ml, moisture tested: %s', (designator, limit, tested) => {
    const { results, because } = read('E7018', designator);
    expect(results.hydrogenLimit).toBe(limit);
    const texts = because.map(({ text }) => text);
    const said = texts.filter((text) => text.startsWith('H'));
    expect(said).toEqual(
      limit === undefined
        ? []
        : [
            `H${limit}: at most {${limit} ml/100g} of hydrogen in the deposited metal, as made and kept dry.`,
          ],
    );
    expect(texts.some((text) => text.startsWith('R: '))).toBe(tested);
  });

  it('refuses a designator after a covering that is not low-hydrogen', () => {
    for (const [name = '', , covering] of rows) {
      const found = answer(electrodeClassification, { classification: name, designator: 'H8' });
      if (covering === 'low-hydrogen') expect(found.ok).toBe(true);
      else expect(found).toMatchObject({ problems: [{ field: 'designator' }] });
    }
  });
});
