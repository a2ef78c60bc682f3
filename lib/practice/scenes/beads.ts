/** Beads on plate: speed, spacing, weave, arc. */
import type { Scene } from '../scene.ts';

export default {
  'travel-speed': [
    {
      told: [
        'You run a bead {beadLength} long in {arcTime}.',
        'A partner times your arc: {arcTime}. The bead measures {beadLength}.',
        'Your notebook says: {beadLength} of bead, {arcTime} of arc.',
      ],
      asked: { travelSpeed: ['How fast did you travel?', 'What was the travel speed?'] },
    },
  ],
  'bead-area': [
    {
      told: [
        'A bead is {width} wide and stands {height} above the plate. Take its crown as a {profile}.',
        'Your caliper says {width} across a bead and {height} up to its crown, which you take as a {profile}.',
      ],
      asked: { area: 'How large is the section of the metal above the plate?' },
      values: { profile: ['parabola'] },
    },
  ],
  'bead-overlap': [
    {
      told: [
        'You lay beads {width} wide and {height} high with {overlap} overlap.',
        'Your bead is {width} wide and {height} high, and the sheet asks for {overlap} overlap.',
      ],
      asked: {
        pitch: ['How far is it from bead to bead?', 'At what spacing do you place the beads?'],
        valleyDepth: 'How deep is the valley between two crowns before the metal flows?',
        layerHeight: 'How high is the layer on the average?',
      },
    },
  ],
  'padding-plan': [
    {
      told: [
        'You pad a surface {plateWidth} wide with beads {plateLength} long. They are {width} wide and {height} high, overlap {overlap}, and one electrode runs {runOut}.',
        'The sheet asks for one layer {plateWidth} across, each bead {plateLength} long. Your beads: {width} wide, {height} high, {overlap} overlap, {runOut} from an electrode.',
      ],
      asked: {
        beads: 'How many beads make the layer?',
        beadLength: 'How much bead do you lay in all?',
        electrodes: 'How many electrodes do you take for the layer?',
      },
      values: {
        plateWidth: {
          us: ['3 in', '4 in', '5 in', '6 in'],
          metric: ['75 mm', '100 mm', '125 mm', '150 mm'],
        },
        plateLength: {
          us: ['6 in', '7 in', '8 in', '10 in'],
          metric: ['150 mm', '175 mm', '200 mm', '250 mm'],
        },
      },
    },
  ],
  'weave-width': [
    {
      told: ['You weld with a {diameter} electrode.', 'In the stinger is a {diameter} electrode.'],
      asked: {
        stringerWidth: 'How wide may a stringer be at most?',
        weaveWidth: 'How wide may you weave at most?',
      },
    },
  ],
  'arc-length-guide': [
    {
      told: [
        'You weld in the {position} position with a {diameter} electrode.',
        'The sheet says: {diameter} electrode, {position} position.',
      ],
      asked: {
        longest: 'How long may the arc be at most?',
        aim: 'At what arc length do you aim?',
      },
    },
  ],
  'joint-restarts': [
    {
      told: [
        'A joint {jointLength} long gets {passes} passes. One electrode runs {runOut}.',
        'You get {runOut} out of an electrode. The joint is {jointLength} long, and you lay {passes} passes.',
      ],
      asked: {
        restartsPerPass: 'How many restarts are in each pass?',
        electrodes: 'How many electrodes do you begin in the whole joint?',
        evenLength:
          'How much bead does each electrode of a pass lay, if you share the pass evenly?',
      },
      values: {
        jointLength: {
          us: ['12 in', '18 in', '24 in', '30 in', '36 in'],
          metric: ['300 mm', '450 mm', '600 mm', '750 mm', '900 mm'],
        },
        passes: ['2', '3', '4'],
      },
    },
  ],
} satisfies Readonly<Record<string, readonly Scene[]>>;
