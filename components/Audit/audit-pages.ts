/** The parts of the audit: address, name, and what a reader finds there. */
export const auditPages: readonly { path: string; name: string; holds: string }[] = [
  {
    path: '/audit/',
    name: 'Verdict',
    holds: 'Each rule, met or broken, with every place it looked at.',
  },
  {
    path: '/audit/sequence/',
    name: 'Sequence',
    holds: 'What builds on what, as a drawing and as a table.',
  },
  {
    path: '/audit/coverage/',
    name: 'Coverage',
    holds: 'Positions, joints and electrodes; each skill from first word to test.',
  },
  {
    path: '/audit/hours/',
    name: 'Hours',
    holds: 'By unit, position and lesson, with the running total.',
  },
  {
    path: '/audit/acceptance/',
    name: 'Acceptance',
    holds: 'What every coupon is judged by, and whose limit it is.',
  },
  {
    path: '/audit/hazards/',
    name: 'Hazards',
    holds: 'Where each is first named, and where it is first met.',
  },
  {
    path: '/audit/numbers/',
    name: 'Numbers',
    holds: 'From lesson to calculation to published value to book.',
  },
  {
    path: '/audit/checks/',
    name: 'Published values',
    holds: 'What books print beside what is computed here.',
  },
  {
    path: '/audit/footing/',
    name: 'Memory and custom',
    holds: 'What no publication was read for, listed plainly.',
  },
  {
    path: '/audit/outlines/',
    name: 'Beside public outlines',
    holds: 'Public task lists and rules, what serves each, what is open; and your own outline.',
  },
  {
    path: '/audit/your-outline/',
    name: 'Your outline',
    holds: 'Load topics of your own, map them, print the comparison.',
  },
  {
    path: '/audit/report/',
    name: 'Report to print',
    holds: 'All of it on a few sheets, with version, date and signature lines.',
  },
  {
    path: '/data/',
    name: 'Files',
    holds: 'The course as CSV and JSON, with columns and schemas.',
  },
  {
    path: '/sources/',
    name: 'Sources',
    holds: 'Every publication, and each place that leans on it.',
  },
];
