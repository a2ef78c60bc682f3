import { describe, expect, it } from 'vitest';
import { electrodesNeeded } from '../../../components/Exercise/electrodes-needed.ts';

/** A plate 4 in wide in beads 3/8 in wide at half overlap: 3/16 in from bead to bead. */
const pad = {
  of: 'padding-plan',
  given: {
    width: '3/8 in',
    height: '3/32 in',
    overlap: '50',
    plateWidth: '4 in',
    plateLength: '8 in',
    runOut: '8 in',
  },
  output: 'electrodes',
};

describe('electrodesNeeded', () => {
  it('takes a stated count as it is', async () => {
    expect(await electrodesNeeded({ count: 16 })).toBe(16);
  });

  it('computes where the library can: one electrode a bead here, (4 - 3/8) / (3/16) + 1 beads', async () => {
    const beads = Math.ceil((4 - 3 / 8) / (3 / 16)) + 1;
    expect(await electrodesNeeded({ computed: pad })).toBe(beads);
  });

  it('burns a computed count as often as it is asked', async () => {
    const once = await electrodesNeeded({ computed: pad });
    expect(await electrodesNeeded({ computed: { ...pad, times: 2 } })).toBe(2 * once);
  });

  it('says what is wrong with figures that the calculation refuses', async () => {
    const broken = { ...pad, given: { ...pad.given, width: 'wide' } };
    await expect(electrodesNeeded({ computed: broken })).rejects.toThrow(/padding-plan.*width/);
  });

  it('says that an output is no number', async () => {
    await expect(electrodesNeeded({ computed: { ...pad, output: 'rods' } })).rejects.toThrow(
      'has no number called rods',
    );
  });
});
