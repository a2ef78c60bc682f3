import { expect, it } from 'vitest';
import { spotAddress } from '../../../components/Audit/spot-address.ts';
import type { Spot } from '../../../lib/curriculum/rule.ts';

it.each<[Spot, string]>([
  [{ page: 'lesson', id: 'flat-bead' }, '/lessons/flat-bead/'],
  [
    {
      page: 'lesson',
      id: 'flat-bead',
      part: 'needs-first',
      sentence: 'Set a low-hydrogen current',
    },
    '/lessons/flat-bead/#needs-first:~:text=Set%20a%20low%2Dhydrogen%20current',
  ],
  [
    { page: 'exercise', id: 'groove-1g', part: 'steps', sentence: 'Grind it back by {1/8 in}.' },
    '/exercises/groove-1g/#steps:~:text=Grind%20it%20back%20by',
  ],
  [
    { page: 'exercise', id: 'groove-1g', part: 'steps', sentence: '{1/8 in} off.' },
    '/exercises/groove-1g/#steps',
  ],
  [{ page: 'calculation', id: 'heat-input' }, '/audit/checks/heat-input/'],
  [{ page: 'source', id: 'aws-d1.1' }, '/sources/#source-aws-d1-1'],
  [{ page: 'term', id: '2G pipe' }, '/glossary/#term-2g-pipe'],
])('%j is found at %s', (spot, address) => {
  expect(spotAddress(spot)).toBe(address);
});
