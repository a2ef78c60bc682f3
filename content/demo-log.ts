/** An evening of the demo shop's electrode log. */
import type { DemoEvening } from '../components/ElectrodeLog/demo-log.ts';
import { demoDay } from './demo-board.ts';

const hot = { temperature: { value: 275, unit: 'degF' } } as const;

export const demoEvening: DemoEvening = {
  day: demoDay,
  time: '21:40',
  holders: [
    {
      name: 'Can 3, lot 17A',
      classification: 'E7018',
      designator: 'none',
      diameter: '1/8 in',
      rows: [
        { event: 'opened', time: '18:10' },
        { event: 'in oven', time: '18:35', ...hot },
      ],
    },
    {
      name: 'Quiver booth 4',
      classification: 'E7018',
      designator: 'none',
      diameter: '1/8 in',
      rows: [{ event: 'out', time: '18:00' }],
    },
    {
      name: 'Quiver booth 7',
      classification: 'E7018',
      designator: 'H4R',
      diameter: '5/32 in',
      rows: [
        { event: 'out', time: '18:40' },
        { event: 'in oven', time: '19:50', ...hot },
        { event: 'out', time: '20:30' },
      ],
    },
    {
      name: 'Quiver booth 9',
      classification: 'E7018',
      designator: 'none',
      diameter: '3/32 in',
      rows: [{ event: 'out', time: '17:20' }],
    },
    {
      name: 'Can 8, lot 22C',
      classification: 'E6010',
      designator: 'none',
      diameter: '1/8 in',
      rows: [{ event: 'opened', time: '19:05' }],
    },
  ],
};
