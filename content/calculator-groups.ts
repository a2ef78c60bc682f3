/** Every calculation once, in the order in which a course meets them. */
export interface CalculatorGroup {
  title: string;
  summary: string;
  /** For whoever runs a class; no lesson has to teach these. */
  forTeaching?: true;
  ids: readonly string[];
}

export const calculatorGroups: readonly CalculatorGroup[] = [
  {
    title: 'Heat and machine',
    summary: 'What the arc puts into the metal, and what the machine and its cables can give.',
    ids: [
      'travel-speed',
      'heat-input',
      'travel-speed-limits',
      'voltage-estimate',
      'run-out-heat',
      'run-out-length',
      'rod-check',
      'starting-current',
      'arc-length-guide',
      'procedure-check',
      'load-voltage',
      'duty-cycle',
      'duty-current',
      'cable-drop',
      'booth-calibration',
      'source-line',
      'source-slope',
    ],
  },
  {
    title: 'Safe at the booth',
    summary: 'The least the law asks for, and where to start.',
    ids: ['filter-shade', 'circuit-limit', 'ventilation-check'],
  },
  {
    title: 'Beads and padding',
    summary: 'How wide, how high, how far apart.',
    ids: [
      'bead-area',
      'bead-overlap',
      'padding-plan',
      'bead-from-electrode',
      'weave-width',
      'joint-restarts',
    ],
  },
  {
    title: 'Fillets',
    summary: 'Legs, throats, the smallest and the largest, and the order of passes.',
    ids: [
      'fillet-throat',
      'fillet-leg',
      'fillet-profile',
      'convexity-limit',
      'fillet-minimum',
      'fillet-passes',
      'leg-from-rod',
      'run-out-for-leg',
      'fillet-weight',
      'prequalified-limits',
      'fillet-strength',
    ],
  },
  {
    title: 'Grooves and what they use',
    summary: 'How much metal, how many electrodes, how long.',
    ids: [
      'groove-area',
      'groove-fit-up',
      'groove-passes',
      'passes-left',
      'deposit',
      'electrode-use',
      'weigh-in',
      'arc-time',
      'transverse-shrinkage',
    ],
  },
  {
    title: 'Steel, heat and dry electrodes',
    summary: 'How warm the steel, how dry the electrodes.',
    ids: [
      'electrode-classification',
      'electrode-exposure',
      'oven-load',
      'preheat-minimum',
      'carbon-equivalent',
      'preheat-cet',
      'cooling-time',
    ],
  },
  {
    title: 'Pipe',
    summary: 'Sizes, positions round the clock, and the joint in between.',
    ids: [
      'pipe-size',
      'pipe-position',
      'pipe-position-shares',
      'groove-position',
      'plate-for-clock',
      'clock-for-plate',
      'pipe-groove',
      'root-fit-up',
      'clock-travel',
    ],
  },
  {
    title: 'Tests and inspection',
    summary: 'What is looked at, bent and measured, and what a test then covers.',
    ids: [
      'visual-check',
      'section-measure',
      'bend-strain',
      'bent-specimen',
      'test-range',
      'continuity',
      'retest',
    ],
  },
  {
    title: 'The class',
    forTeaching: true,
    summary: 'Metal, electrodes and hours for everybody.',
    ids: ['class-materials', 'cut-plan'],
  },
];
