import { defineFormula } from '../calculation.ts';

export default defineFormula({
  title: 'Travel round the clock',
  summary:
    'How long an hour of the clock is on a pipe, how soon it is welded, and how far an electrode goes.',
  inputs: {
    outsideDiameter: {
      label: 'Outside diameter of the pipe',
      symbol: 'D',
      unit: 'in',
      limits: { min: 0.4, max: 100, why: 'smaller is tube, larger is a tank' },
      example: { us: '6.625', metric: '168.3' },
      obtain: 'From the pipe’s size, or a tape round it divided by 3.14. NPS is not a diameter.',
      estimateBy: 'pipe-size',
    },
    travelSpeed: {
      label: 'Travel speed',
      symbol: 'v',
      unit: 'in/min',
      limits: { min: 0.1, max: 200, why: 'slower or faster than any hand moves an electrode' },
      usual: { min: 2, max: 20, why: 'by hand {2 in/min} to {20 in/min} is usual' },
      example: { us: '4', metric: '100' },
      obtain: 'Time a bead and measure it.',
      estimateBy: 'travel-speed',
    },
    runOut: {
      label: 'Bead length from one electrode',
      symbol: 'L',
      unit: 'in',
      limits: { min: 0.5, max: 60, why: 'no electrode leaves a shorter or longer bead' },
      usual: { min: 2, max: 20, why: 'one electrode runs {2 in} to {20 in}' },
      example: { us: '5', metric: '125' },
      obtain: 'Rule along what one electrode welded on a practice piece.',
    },
  },
  constants: {
    hours: {
      value: 12,
      symbol: 'n',
      unit: '1',
      name: 'hours on the clock',
      cite: { source: 'geometry', known: 'derived' },
    },
  },
  outputs: {
    circumference: {
      label: 'Once round the pipe',
      symbol: 'C',
      unit: 'in',
      digits: 3,
      formula: 'pi * outsideDiameter',
    },
    hourLength: {
      label: 'One hour of the clock',
      symbol: 'h',
      unit: 'in',
      digits: 2,
      formula: 'circumference / hours',
    },
    hourTime: {
      label: 'Arc time for one hour of the clock',
      symbol: 't',
      unit: 's',
      digits: 2,
      formula: '60 * hourLength / travelSpeed',
    },
    hoursPerElectrode: {
      label: 'Hours of the clock that one electrode goes',
      symbol: 'k',
      unit: '1',
      digits: 2,
      formula: 'runOut / hourLength',
    },
    electrodes: {
      label: 'Electrodes for one pass round',
      symbol: 'N',
      unit: '1',
      digits: 2,
      formula: 'circumference / runOut',
    },
  },
  beware: [
    'Measured on the outside. The root pass runs on the smaller circle inside and is a little shorter.',
    'Time is arc time; stops to change electrode and posture come on top.',
  ],
  cite: [{ source: 'geometry', at: 'circumference of a circle', known: 'derived' }],
  related: ['pipe-size', 'pipe-position', 'rod-check'],
  compute({ outsideDiameter, travelSpeed, runOut }) {
    const circumference = Math.PI * outsideDiameter;
    const hourLength = circumference / 12;
    return {
      circumference,
      hourLength,
      hourTime: (60 * hourLength) / travelSpeed,
      hoursPerElectrode: runOut / hourLength,
      electrodes: circumference / runOut,
    };
  },
});
