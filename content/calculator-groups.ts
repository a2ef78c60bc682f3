/** Every calculation once, in the order in which a course meets them. */
export interface CalculatorGroup {
  title: string;
  summary: string;
  ids: readonly string[];
}

export const calculatorGroups: readonly CalculatorGroup[] = [
  {
    title: 'Heat and machine',
    summary: 'What the arc puts into the metal, and what the machine can give.',
    ids: ['travel-speed', 'heat-input'],
  },
  {
    title: 'Beads and padding',
    summary: 'How wide, how high, how far apart.',
    ids: ['bead-overlap'],
  },
  {
    title: 'Steel and temperature',
    summary: 'Warm the steel, keep the electrodes dry.',
    ids: ['preheat-minimum'],
  },
];
