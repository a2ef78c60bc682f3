/**
 * Steel pipe by nominal size (NPS) and schedule, ASME B36.10M. Inches and millimeters are both
 * printed; neither is converted from the other.
 */
import type { Citation } from '../calculation.ts';

/** Schedules that stand here: by number, then by weight class. */
export const schedules = ['40', '80', '120', '160', 'STD', 'XS', 'XXS'] as const;
export type Schedule = (typeof schedules)[number];

/** Inches, then millimeters. */
type Size = readonly [inches: number, millimeters: number];

interface PipeRow {
  outside: Size;
  walls: Partial<Record<Schedule, Size>>;
}

const rows = {
  '1/2': {
    outside: [0.84, 21.3],
    walls: {
      40: [0.109, 2.77],
      80: [0.147, 3.73],
      160: [0.188, 4.78],
      STD: [0.109, 2.77],
      XS: [0.147, 3.73],
      XXS: [0.294, 7.47],
    },
  },
  '3/4': {
    outside: [1.05, 26.7],
    walls: {
      40: [0.113, 2.87],
      80: [0.154, 3.91],
      160: [0.219, 5.56],
      STD: [0.113, 2.87],
      XS: [0.154, 3.91],
      XXS: [0.308, 7.82],
    },
  },
  '1': {
    outside: [1.315, 33.4],
    walls: {
      40: [0.133, 3.38],
      80: [0.179, 4.55],
      160: [0.25, 6.35],
      STD: [0.133, 3.38],
      XS: [0.179, 4.55],
      XXS: [0.358, 9.09],
    },
  },
  '1-1/4': {
    outside: [1.66, 42.2],
    walls: {
      40: [0.14, 3.56],
      80: [0.191, 4.85],
      160: [0.25, 6.35],
      STD: [0.14, 3.56],
      XS: [0.191, 4.85],
      XXS: [0.382, 9.7],
    },
  },
  '1-1/2': {
    outside: [1.9, 48.3],
    walls: {
      40: [0.145, 3.68],
      80: [0.2, 5.08],
      160: [0.281, 7.14],
      STD: [0.145, 3.68],
      XS: [0.2, 5.08],
      XXS: [0.4, 10.15],
    },
  },
  '2': {
    outside: [2.375, 60.3],
    walls: {
      40: [0.154, 3.91],
      80: [0.218, 5.54],
      160: [0.344, 8.74],
      STD: [0.154, 3.91],
      XS: [0.218, 5.54],
      XXS: [0.436, 11.07],
    },
  },
  '2-1/2': {
    outside: [2.875, 73],
    walls: {
      40: [0.203, 5.16],
      80: [0.276, 7.01],
      160: [0.375, 9.53],
      STD: [0.203, 5.16],
      XS: [0.276, 7.01],
      XXS: [0.552, 14.02],
    },
  },
  '3': {
    outside: [3.5, 88.9],
    walls: {
      40: [0.216, 5.49],
      80: [0.3, 7.62],
      160: [0.438, 11.13],
      STD: [0.216, 5.49],
      XS: [0.3, 7.62],
      XXS: [0.6, 15.24],
    },
  },
  '3-1/2': {
    outside: [4, 101.6],
    walls: { 40: [0.226, 5.74], 80: [0.318, 8.08], STD: [0.226, 5.74], XS: [0.318, 8.08] },
  },
  '4': {
    outside: [4.5, 114.3],
    walls: {
      40: [0.237, 6.02],
      80: [0.337, 8.56],
      120: [0.438, 11.13],
      160: [0.531, 13.49],
      STD: [0.237, 6.02],
      XS: [0.337, 8.56],
      XXS: [0.674, 17.12],
    },
  },
  '5': {
    outside: [5.563, 141.3],
    walls: {
      40: [0.258, 6.55],
      80: [0.375, 9.53],
      120: [0.5, 12.7],
      160: [0.625, 15.88],
      STD: [0.258, 6.55],
      XS: [0.375, 9.53],
      XXS: [0.75, 19.05],
    },
  },
  '6': {
    outside: [6.625, 168.3],
    walls: {
      40: [0.28, 7.11],
      80: [0.432, 10.97],
      120: [0.562, 14.27],
      160: [0.719, 18.26],
      STD: [0.28, 7.11],
      XS: [0.432, 10.97],
      XXS: [0.864, 21.95],
    },
  },
  '8': {
    outside: [8.625, 219.1],
    walls: {
      40: [0.322, 8.18],
      80: [0.5, 12.7],
      120: [0.719, 18.26],
      160: [0.906, 23.01],
      STD: [0.322, 8.18],
      XS: [0.5, 12.7],
      XXS: [0.875, 22.23],
    },
  },
  '10': {
    outside: [10.75, 273],
    walls: {
      40: [0.365, 9.27],
      80: [0.594, 15.09],
      120: [0.844, 21.44],
      160: [1.125, 28.58],
      STD: [0.365, 9.27],
      XS: [0.5, 12.7],
      XXS: [1, 25.4],
    },
  },
  '12': {
    outside: [12.75, 323.8],
    walls: {
      40: [0.406, 10.31],
      80: [0.688, 17.48],
      120: [1, 25.4],
      160: [1.312, 33.32],
      STD: [0.375, 9.53],
      XS: [0.5, 12.7],
      XXS: [1, 25.4],
    },
  },
} as const satisfies Record<string, PipeRow>;

export type Nps = keyof typeof rows;
/** In order of size; an object of these keys would list the whole numbers first. */
export const npsSizes = [
  '1/2',
  '3/4',
  '1',
  '1-1/4',
  '1-1/2',
  '2',
  '2-1/2',
  '3',
  '3-1/2',
  '4',
  '5',
  '6',
  '8',
  '10',
  '12',
] as const satisfies readonly Nps[];

/** By nominal size; the standard has no wall where a schedule is missing. */
export const pipeRows: Readonly<Record<Nps, PipeRow>> = rows;

const at = 'table of dimensions';
/** Millimeters and most inches were read; inches of some walls are from memory and agree. */
export function citePipe(nps: Nps, schedule: Schedule): Citation {
  const recalled =
    ['STD', 'XS', 'XXS'].includes(schedule) ||
    (nps === '12' && (schedule === '120' || schedule === '160'));
  return recalled
    ? { source: 'asme-b36.10', at: `${at}; this wall in inches from memory`, known: 'memory' }
    : { source: 'asme-b36.10', at, known: 'read' };
}

/** Where printed tables differ. */
export const pipeDisagreements: Partial<Record<`${Nps} ${Schedule}`, string>> = {
  '1-1/2 XXS': '0.400 in is 10.16 mm; the metric column prints 10.15.',
  '4 120': 'Older tables print 0.437 in for the same wall.',
  '8 120': 'Older tables print 0.718 in for the same wall.',
  '10 120': 'Older tables print 0.843 in for the same wall.',
};
