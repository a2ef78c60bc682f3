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
    ['Tighten each lug.', ['live-terminals']],
    ['Look at a terminal.', ['live-terminals']],
    ['Look at the terminals.', ['live-terminals']],
    ['Flame-cut the plate.', ['cutting']],
    ['Flame cutting comes first.', ['cutting']],
    ['Take the grinder.', ['grinding', 'noise']],
    ['Grinding takes long.', ['grinding', 'noise']],
    ['Etch the slice.', ['acid']],
    ['An etchant shows it.', ['acid']],
    ['Mind the acid.', ['acid']],
    ['Use the bend jig.', ['bend-press']],
    ['Use the bending press.', ['bend-press']],
    ['Make a guided bend.', ['bend-press']],
    ['Wipe with solvent.', ['solvent']],
    ['Wipe with acetone.', ['solvent']],
    ['Chipping takes care.', ['chipping', 'hot-metal']],
    ['Grind, chip, grind.', ['chipping', 'hot-metal', 'grinding', 'noise']],
  ])('of a step: %s', (step, expected) => {
    expect(hazards({ electrodes: [], steps: [step] })).toEqual(expected);
  });
  it('name the step that brings them', () => {
    const found = exposures(exercise('one', { steps: ['Look.', 'Saw a slice.'] }));
    expect(found.at(-1)).toEqual({ hazard: 'cutting', step: 'Saw a slice.' });
  });
  it('name each hazard once, with the first step that brings it', () => {
    const steps = ['Saw a slice.', 'Saw another.'];
    expect(exposures(exercise('one', { electrodes: [], steps }))).toEqual([
      { hazard: 'cutting', step: 'Saw a slice.' },
    ]);
  });
  it('do not see a hazard inside another word', () => {
    expect(
      hazards({ electrodes: [], steps: ['The chipped plug of torchon lace, proven.'] }),
    ).toEqual(['chipping', 'hot-metal']);
  });
  it('of welding overhead and of loose pipe', () => {
    for (const position of ['overhead', 'pipe 5G', 'pipe 6G'])
      expect(hazards({ position: ['flat', position] })).toContain('overhead-spatter');
    expect(hazards({ position: ['overhead'], electrodes: [] })).toEqual([]);
    expect(hazards({ joint: ['pipe groove'] })).toContain('rolling-pipe');
  });
});
