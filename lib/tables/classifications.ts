/** AWS A5.1 Table 1 (from memory): the classifications this course speaks of, the usual ones first. */
export const classifications = [
  'E7018',
  'E6010',
  'E6011',
  'E6012',
  'E6013',
  'E6019',
  'E6020',
  'E6027',
  'E7014',
  'E7015',
  'E7016',
  'E7016-1',
  'E7018-1',
  'E7018M',
  'E7024',
  'E7024-1',
  'E7027',
  'E7028',
  'E7048',
] as const;
export type Classification = (typeof classifications)[number];
