/** The parts of the audit: address, name, and what a reader finds there. */
export const auditPages: readonly { path: string; name: string; holds: string }[] = [
  {
    path: '/audit/',
    name: 'Verdict',
    holds: 'Each rule, met or broken, with every place it looked at.',
  },
  {
    path: '/audit/checks/',
    name: 'Published values',
    holds: 'What books print beside what is computed here.',
  },
  {
    path: '/sources/',
    name: 'Sources',
    holds: 'Every publication, and each place that leans on it.',
  },
];
