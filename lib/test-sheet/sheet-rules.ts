/** The calculations behind the test-day sheet; everything on it that is a rule comes from them. */
import type { Calculation, Inputs } from '../calculation.ts';
import { loadCalculation } from '../calculations.ts';
import { orderedPipe } from '../inputs/pipe.ts';

const ids = [
  'test-range',
  'bend-strain',
  'continuity',
  'retest',
  'bent-specimen',
  'visual-check',
  'pipe-size',
] as const;

export type SheetRules = Readonly<Record<(typeof ids)[number], Calculation>>;

/** The chosen code stands first on the sheet, the other beside it. */
export const codes = ['AWS D1.1', 'ASME IX'] as const;
export type SheetCode = (typeof codes)[number];

/** All of them, fetched side by side. */
export async function loadSheetRules(): Promise<SheetRules> {
  const loaded = await Promise.all(ids.map(loadCalculation));
  return Object.fromEntries(ids.map((id, place) => [id, loaded[place]])) as SheetRules;
}

/** What the sheet asks for: the inputs of its calculations, under the names of the address. */
export function sheetInputs(rules: SheetRules): Inputs {
  const range = rules['test-range'].inputs as Inputs;
  const strain = rules['bend-strain'].inputs as Inputs;
  const { code, edition, test, form, thickness, outsideDiameter, deposits } = range;
  return {
    code,
    test,
    form,
    nps: { ...orderedPipe.nps, optional: true },
    schedule: { ...orderedPipe.schedule, optional: true },
    edition: { ...edition, optional: true },
    thickness,
    outsideDiameter,
    deposits,
    strap: strain.thickness,
    plunger: strain.mandrelDiameter,
    day: (rules.continuity.inputs as Inputs).qualified,
  } as Inputs;
}
