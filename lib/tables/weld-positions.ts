/**
 * Positions of production welds by the inclination of the weld's axis and the rotation of its
 * face: AWS A3.0, AWS D1.1:2020 Figures 6.1 and 6.2 (2015 Figures 4.1 and 4.2), ASME IX QW-461.1
 * and .2. At 0° the face looks down, at 180° up. Rows share their limits; the first row that holds
 * is taken, and their order is our choice where the figures are silent.
 */
import type { Citation } from '../calculation.ts';

/** Positions of production welds, as the figures name them; a test position is `1G`, not one of these. */
export const positionNames = ['flat', 'horizontal', 'vertical', 'overhead'] as const;
export type Position = (typeof positionNames)[number];

type Range = readonly [from: number, to: number];

export interface PositionRow {
  position: Position;
  /** Letter of the area in the figure. */
  area: string;
  /** Of the axis, in degrees from level. */
  inclination: Range;
  /** Of the face, in degrees. */
  rotation: readonly Range[];
  cite: Citation;
}

const read: Citation = {
  source: 'aws-d3.6',
  at: 'Fig. 5.1, which repeats the figures of D1.1',
  known: 'read',
};
const recalled = (at: string): Citation => ({ source: 'aws-d1.1', at, known: 'memory' });
const groove = recalled('2020 Fig. 6.1');
const fillet = recalled('2020 Fig. 6.2');

/** So steep that the face may look anywhere. */
const steep = (cite: Citation): PositionRow => ({
  position: 'vertical',
  area: 'E',
  inclination: [80, 90],
  rotation: [[0, 360]],
  cite,
});

/** The first row that holds is taken. */
export const positionRows: Readonly<Record<'groove' | 'fillet', readonly PositionRow[]>> = {
  groove: [
    steep(read),
    { position: 'flat', area: 'A', inclination: [0, 15], rotation: [[150, 210]], cite: groove },
    {
      position: 'horizontal',
      area: 'B',
      inclination: [0, 15],
      rotation: [
        [80, 150],
        [210, 280],
      ],
      cite: groove,
    },
    { position: 'vertical', area: 'D', inclination: [15, 80], rotation: [[80, 280]], cite: read },
    {
      position: 'overhead',
      area: 'C',
      inclination: [0, 80],
      rotation: [
        [0, 80],
        [280, 360],
      ],
      cite: groove,
    },
  ],
  fillet: [
    steep(fillet),
    { position: 'flat', area: 'A', inclination: [0, 15], rotation: [[150, 210]], cite: fillet },
    {
      position: 'horizontal',
      area: 'B',
      inclination: [0, 15],
      rotation: [
        [125, 150],
        [210, 235],
      ],
      cite: fillet,
    },
    {
      position: 'vertical',
      area: 'D',
      inclination: [15, 80],
      rotation: [[125, 235]],
      cite: fillet,
    },
    {
      position: 'overhead',
      area: 'C',
      inclination: [0, 80],
      rotation: [
        [0, 125],
        [235, 360],
      ],
      cite: fillet,
    },
  ],
};
