import { describe, expect, it } from 'vitest';
import { answer } from '../../../lib/answer.ts';
import type { Formula } from '../../../lib/calculation.ts';
import deposit from '../../../lib/calculations/deposit.ts';
import strength from '../../../lib/calculations/fillet-strength.ts';
import throat from '../../../lib/calculations/fillet-throat.ts';
import groove from '../../../lib/calculations/groove-area.ts';
import heatInput from '../../../lib/calculations/heat-input.ts';
import cet from '../../../lib/calculations/preheat-cet.ts';
import runOut from '../../../lib/calculations/run-out-heat.ts';
import transverse from '../../../lib/calculations/transverse-shrinkage.ts';
import weave from '../../../lib/calculations/weave-width.ts';
import { holdsInReaderUnits } from '../../../lib/text/reader-units.ts';
import { slotTexts } from '../../../lib/text/slot-texts.ts';
import { workedLines } from '../../../lib/text/worked-lines.ts';

const answered = (formula: Formula, typed: Record<string, string>) => {
  const found = answer(formula as never, typed);
  if (!found.ok) throw new Error(found.problems.map(({ text }) => text).join());
  return found;
};
const plain = (text: string | undefined) => text?.replaceAll('\u00a0', ' ');

// 60 s/min × 22 V × 125 A = 165,000 J/min; over 6 in/min that is 27.5 kJ/in, four fifths of it 22.
const bead = answered(heatInput as never, {
  voltage: '22 V',
  current: '125 A',
  travelSpeed: '6 in/min',
});

describe('workedLines', () => {
  it('writes symbols, then numbers with units, then the answer, an output after the other', () => {
    const [energy, heat] = workedLines(heatInput as never, bead);
    expect(energy).toMatchObject({ name: 'arcEnergy', symbols: 'E = 60 * U * I / (1000 * v)' });
    expect(plain(energy?.numbers)).toBe('60 * (22 V) * (125 A) / (1000 * (6 in/min))');
    expect(heat?.symbols).toBe('Q = η * E');
    expect(plain(heat?.numbers)).toBe('0.8 * (27.5 kJ/in)');
    expect(plain(heat?.answer)).toBe('22 kJ/in');
  });

  it('puts what was typed in metric into the source’s units', () => {
    const [energy] = workedLines(
      heatInput as never,
      answered(heatInput as never, { voltage: '22', current: '125', travelSpeed: '152.4 mm/min' }),
    );
    expect(plain(energy?.numbers)).toContain('(6 in/min)');
  });
});

describe('workedLines of other formulas', () => {
  it('names a constant by its sign and puts its value in', () => {
    // sin of plates: a fillet's strength is 0.60 of the strength class.
    const lines = workedLines(
      strength as never,
      answered(strength as never, {
        leg: '5/16 in',
        length: '8 in',
        electrodeStrength: '70 ksi',
        loadAngle: '0 deg',
      }),
    );
    const line = lines.find(({ name }) => name === 'design');
    expect(line?.symbols).toBe('R_d = φ * R_n');
    expect(plain(line?.numbers)).toMatch(/^0\.75 \* \(\S+ kip\)$/);
  });

  it('quotes a chosen word, and leaves what was not given by its name', () => {
    const lines = workedLines(
      groove as never,
      answered(groove as never, {
        groove: 'single bevel',
        thickness: '3/8 in',
        rootOpening: '1/4 in',
        includedAngle: '45 deg',
      }),
    );
    expect(plain(lines[0]?.numbers)).toContain('equalText("single bevel", "V")');
    expect(plain(lines[0]?.numbers)).toContain('(3/8 in)'.replace('3/8', '0.375'));
  });

  it('prints three figures where an output asks for no other number of them', () => {
    const [wide] = workedLines(
      weave as never,
      answered(weave as never, { diameter: '0.15625 in' }),
    );
    expect(plain(wide?.answer)).toBe('0.313 in');
  });
});

describe('holdsInReaderUnits', () => {
  it('holds where the formula is a plain product, in either system', () => {
    expect(holdsInReaderUnits(heatInput as never, bead.values)).toContain('heatInput');
    const { values } = answered(transverse as never, {
      area: '0.3 in2',
      thickness: '3/8 in',
      rootOpening: '1/4 in',
    });
    expect(holdsInReaderUnits(transverse as never, values).size).toBeGreaterThan(0);
  });

  it('holds for a metric formula with inches put in, and for a quotient of lengths alone', () => {
    const { values } = answered(runOut as never, {
      coreDiameter: '1/8 in',
      consumedLength: '12 in',
      runOut: '8 in',
    });
    // 0.0472 kJ/mm³ has a partner in no system, so Q in kJ/mm stands on millimeters alone.
    expect([...holdsInReaderUnits(runOut as never, values)]).toEqual([]);
    const plate = answered(throat as never, { legA: '5/16 in', legB: '1/4 in' });
    expect([...holdsInReaderUnits(throat as never, plate.values)]).toEqual([
      'faceWidth',
      'throat',
      'area',
    ]);
  });

  it('does not hold where a number stands for a unit, such as twelve inches in a foot', () => {
    const { values } = answered(deposit as never, {
      area: '0.3 in2',
      length: '7 in',
      density: '0.284 lb/in3',
    });
    expect(holdsInReaderUnits(deposit as never, values)).not.toContain('massPerLength');
  });
});

describe('slotTexts', () => {
  it('fills a line with the reader’s own units where the formula holds in them', () => {
    const { heatInput: line } = slotTexts(heatInput as never, bead, 'us');
    expect(line && plain(line.arcEnergy)).toBe('27.5 kJ/in');
    expect(line && plain(line['=heatInput'])).toBe('22 kJ/in');
  });

  it('puts a constant, a chosen word and a negative value in as a reader writes them', () => {
    const found = answered(strength as never, {
      leg: '5/16 in',
      length: '8 in',
      electrodeStrength: '70 ksi',
      loadAngle: '0 deg',
    });
    const { design } = slotTexts(strength as never, found, 'us');
    expect(design && Object.values(design)).toContain('0.75');
    const cut = answered(groove as never, {
      groove: 'single bevel',
      thickness: '3/8 in',
      rootOpening: '1/4 in',
      includedAngle: '45 deg',
    });
    expect(slotTexts(groove as never, cut, 'us').area?.groove).toBe('single bevel');
    const cold = answered(cet as never, {
      cet: '0.277',
      thickness: '10 mm',
      hydrogen: '5',
      heatInput: '1 kJ/mm',
    });
    // 160·tanh(10/35) − 110 = −65.5 °C
    expect(plain(slotTexts(cet as never, cold, 'metric').temperature?.thicknessTerm)).toMatch(
      /^\(−65\.49 °C\)$/,
    );
  });

  it('keeps the source’s units where it does not, and converts the answer after it', () => {
    const found = answered(deposit as never, {
      area: '0.3 in2',
      length: '7 in',
      density: '0.284 lb/in3',
    });
    // 12 × 0.284 × 0.3 = 1.0224 lb/ft; a foot is 0.3048 m and a pound 0.45359237 kg: 1.5215 kg/m.
    const { massPerLength: line } = slotTexts(deposit as never, found, 'metric');
    expect(plain(line?.area)).toBe('0.3 in²');
    expect(plain(line?.['=massPerLength'])).toBe('1.02 lb/ft = 1.52 kg/m');
  });
});
