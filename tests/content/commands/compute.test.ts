import { describe, expect, it } from 'vitest';
import { asked } from '../../../content/commands/asked.ts';
import { calculationIds } from '../../../content/commands/calculation-ids.ts';
import { described } from '../../../content/commands/described.ts';
import { told } from '../../../content/commands/told.ts';
import { answer, type Typed } from '../../../lib/answer.ts';
import { loadCalculation } from '../../../lib/calculations.ts';
import { isUnit, type System } from '../../../lib/units.ts';

interface Part {
  label: string;
  obtain: string;
  takes: string;
  gives: string;
  required: boolean;
  unit?: string;
  units?: string[];
  limits?: { min?: number; max?: number; unit: string; why: string };
  choices?: string[];
  rows?: Record<string, Part>;
  example: unknown;
}
interface Documented {
  id: string;
  summary: string;
  inputs: Record<string, Part>;
  outputs: Record<string, Part>;
  sources: { source: string; title: string; known: string }[];
}

const library = await Promise.all(
  calculationIds().map(async (id) => {
    const calculation = await loadCalculation(id);
    return { id, calculation, documented: described(id, calculation) as Documented };
  }),
);

/** The examples as the list prints them; what has none is left out. */
const examples = ({ inputs }: Documented, system: System): Typed =>
  Object.fromEntries(
    Object.entries(inputs).flatMap(([name, { example }]) => {
      const isPair = typeof example === 'object' && example !== null && 'us' in example;
      const text = isPair ? (example as Record<System, string>)[system] : example;
      return text === '' ? [] : [[name, text as string]];
    }),
  );

describe.each(library)('$id, in the list of the library', ({ calculation, documented }) => {
  const { summary, inputs, outputs, sources } = documented;
  const parts = Object.values(inputs).flatMap((one) => [one, ...Object.values(one.rows ?? {})]);

  it('says in a sentence what it is for', () => expect(summary).toMatch(/^[A-Z].{20,}[.?]$/));

  it('says of each input what it takes, how it is got, and whether it has to be there', () => {
    for (const { label, obtain, takes, required, example } of parts) {
      expect([label, obtain, takes].every((text) => text.length > 1)).toBe(true);
      expect(required).toBeTypeOf('boolean');
      expect(example).toBeDefined();
    }
  });

  it('gives each quantity its units, and its limits with their reason', () => {
    for (const { unit, units = ['1'], limits } of parts) {
      if (unit === undefined) continue;
      expect(units).toContain(unit);
      expect(units.every(isUnit)).toBe(true);
      expect(limits?.unit).toBe(unit);
      expect(limits?.why.length).toBeGreaterThan(5);
    }
  });

  it('says of each output what it gives', () => {
    for (const { label, gives } of Object.values(outputs))
      expect([label, gives].every((text) => text.length > 1)).toBe(true);
  });

  it('names its sources in full', () => {
    expect(sources.length).toBeGreaterThan(0);
    for (const { title, known } of sources) {
      expect(title.length).toBeGreaterThan(10);
      expect(['read', 'memory', 'practice', 'derived']).toContain(known);
    }
  });

  it.each(['us', 'metric'] as const)('has %s examples that can be typed as they stand', (system) =>
    expect(answer(calculation, examples(documented, system))).toMatchObject({ ok: true }),
  );
});

async function toldOf(id: string, typed: Typed): Promise<string> {
  const calculation = await loadCalculation(id);
  const found = answer(calculation, typed);
  return found.ok
    ? told(id, calculation, typed, found).replaceAll('\u00a0', ' ')
    : JSON.stringify(found);
}

describe('an answer in the terminal', () => {
  it('shows symbols, numbers, answer and the practical size of a formula', async () => {
    const text = await toldOf('bead-overlap', { width: '3/8', height: '3/32', overlap: '50' });
    expect(text).toContain('d = w * (1 - p / 100)\n    = (0.375 in) * (1 - (50 %) / 100)\n');
    expect(text).toContain('= 0.188 in, so 3/16 in (pitch: Spacing from bead to bead)');
  });

  it('heads the columns of a list, and leaves outlines for a drawing out', async () => {
    const pieces = [{ length: '8 in', count: '32' }];
    const text = await toldOf('cut-plan', { pieces, stockLength: '240', kerf: '1/16' });
    expect(text).toContain('    Bar · Pieces · In pieces · Cuts, trim and rest\n    1 · 29 × 8 in');
    expect(text).toContain('proven (Proven the fewest): yes\n');
    expect(text).not.toContain('Bars with their cuts');
  });

  it('says limits and cautions in the system that was typed', async () => {
    const text = await toldOf('fillet-minimum', { thinner: '10 mm', thicker: '12 mm' });
    expect(text).toContain('thinner: 0.8 mm to 1016 mm: ');
    expect(text).toMatch(/^ {2}Caution: The 2005 and 2010 editions/m);
    expect(text).toMatch(/^Beware$/m);
  });
});

describe('a calculation that is given nothing', () => {
  it('says what it asks for, with examples, accepted words and standard values', async () => {
    const text = asked(await loadCalculation('fillet-minimum')).join('\n');
    expect(text).toContain('code="AISC 360"  Code: AISC 360, AWS D1.1 (AISC 360 if left out)');
    expect(text).toContain('thinner="3/8 in"  Thickness of the thinner part');
  });
});
