/**
 * Which calculations problems are made of, and where their scenes lie: one file a topic, fetched when
 * somebody takes up a problem.
 */
import { namedIn, type Scene } from './scene.ts';

const topics: Readonly<Record<string, readonly string[]>> = {
  beads: [
    'travel-speed',
    'bead-area',
    'bead-overlap',
    'padding-plan',
    'weave-width',
    'arc-length-guide',
    'joint-restarts',
  ],
  codes: ['prequalified-limits', 'procedure-check', 'continuity', 'test-range', 'visual-check'],
  electrodes: ['electrode-use', 'arc-time', 'electrode-classification', 'oven-load'],
  'eyes-and-air': ['filter-shade', 'ventilation-check'],
  'fillet-limits': ['fillet-minimum', 'fillet-strength', 'convexity-limit'],
  fillets: ['fillet-throat', 'fillet-leg', 'fillet-profile', 'fillet-passes', 'fillet-weight'],
  grooves: [
    'groove-area',
    'groove-passes',
    'passes-left',
    'deposit',
    'transverse-shrinkage',
    'root-fit-up',
    'bend-strain',
  ],
  heat: ['heat-input', 'travel-speed-limits', 'starting-current', 'voltage-estimate'],
  logs: ['electrode-exposure', 'booth-calibration', 'bent-specimen', 'retest'],
  machines: [
    'load-voltage',
    'duty-cycle',
    'duty-current',
    'cable-drop',
    'circuit-limit',
    'source-line',
    'source-slope',
  ],
  pipes: ['clock-travel', 'pipe-size', 'pipe-groove'],
  positions: [
    'pipe-position',
    'pipe-position-shares',
    'plate-for-clock',
    'clock-for-plate',
    'groove-position',
  ],
  'run-outs': [
    'rod-check',
    'run-out-heat',
    'run-out-length',
    'bead-from-electrode',
    'leg-from-rod',
    'run-out-for-leg',
    'weigh-in',
  ],
  steels: ['carbon-equivalent', 'preheat-cet', 'preheat-minimum', 'cooling-time'],
};
const topicOf = new Map(
  Object.entries(topics).flatMap(([topic, ids]) => ids.map((id) => [id, topic] as const)),
);

/** Ids of all calculations that problems are made of. */
export const practiced: readonly string[] = [...topicOf.keys()];

/** Can problems be made of the calculation with this id? */
export const canBePracticed = (id: string): boolean => topicOf.has(id);

/**
 * The scenes of a calculation, with the shop's lists for what has none of its own.
 * @throws RangeError for a calculation without scenes; ask `canBePracticed` first
 */
export async function loadScenes(id: string): Promise<readonly Scene[]> {
  const topic = topicOf.get(id);
  if (!topic) throw new RangeError(`no problem is made of ${id}`);
  const [{ shopLists }, own] = await Promise.all([
    import('./shop-lists.ts'),
    import(`./scenes/${topic}.ts`),
  ]);
  return (own.default[id] as readonly Scene[]).map((scene) => {
    const named = [...scene.told, ...Object.values(scene.asked).flat()].flatMap(namedIn);
    const listed = Object.entries(shopLists).filter(([name]) => named.includes(name));
    return { ...scene, values: { ...Object.fromEntries(listed), ...scene.values } };
  });
}
