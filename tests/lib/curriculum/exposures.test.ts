import { describe, expect, it } from 'vitest';
import { exposures } from '../../../lib/curriculum/exposures.ts';
import { exercise, gate } from './sound-course.ts';

const hazards = (change: Parameters<typeof exercise>[1]) =>
  exposures(exercise('one', change)).map(({ hazard }) => hazard);

describe('exposures', () => {
  it('come with every arc', () => {
    expect(hazards({})).toEqual(['arc-rays', 'fume', 'shock', 'burns', 'fire']);
  });
  it('do not come where nothing burns', () => {
    expect(exposures(gate)).toEqual([]);
  });
  it.each([
    ['Chip and brush.', ['chipping', 'hot-metal']],
    ['Saw a slice.', ['cutting']],
    ['Grind it flat.', ['grinding', 'noise']],
    ['Warm it with the torch.', ['torch']],
    ['Put it into the oven.', ['hot-oven']],
    ['Wipe on the etching liquid.', ['acid']],
    ['Tighten the lugs.', ['live-terminals']],
  ])('of a step: %s', (step, expected) => {
    expect(hazards({ electrodes: [], steps: [step] })).toEqual(expected);
  });
  it('name the step that brings them', () => {
    const found = exposures(exercise('one', { steps: ['Look.', 'Saw a slice.'] }));
    expect(found.at(-1)).toEqual({ hazard: 'cutting', step: 'Saw a slice.' });
  });
  it('do not see a hazard inside another word', () => {
    expect(
      hazards({ electrodes: [], steps: ['The chipped plug of torchon lace, proven.'] }),
    ).toEqual(['chipping', 'hot-metal']);
  });
  it('of welding overhead and of loose pipe', () => {
    expect(hazards({ position: ['overhead'] })).toContain('overhead-spatter');
    expect(hazards({ joint: ['pipe groove'] })).toContain('rolling-pipe');
  });
});
