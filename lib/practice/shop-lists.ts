/**
 * Sizes that a shop has, by the name of an input: plate and electrodes as they are sold, lengths as
 * they are cut, angles as they are set. Common practice, no source.
 */
import type { Values } from './scene.ts';

const sizes = (us: string, metric: string, unit: readonly [string, string]): Values => ({
  us: us.split(' ').map((text) => `${text} ${unit[0]}`),
  metric: metric.split(' ').map((text) => `${text} ${unit[1]}`),
});
const lengths = (us: string, metric: string) => sizes(us, metric, ['in', 'mm']);

const steps = (from: number, to: number, step: number, unit: string): string[] =>
  Array.from({ length: (to - from) / step + 1 }, (_, place) => `${from + place * step} ${unit}`);

const electrodes = lengths('3/32 1/8 5/32', '2.4 3.2 4');
const plates = lengths('1/4 5/16 3/8 1/2 5/8 3/4 1', '6 8 10 12 16 20 25');
const legs = lengths('3/16 1/4 5/16 3/8 1/2', '5 6 8 10 12');
const runOuts = lengths('5 5-1/2 6 6-1/2 7 7-1/2 8 8-1/2 9', '130 140 150 160 170 180 190 200 220');

export const shopLists: Readonly<Record<string, Values>> = {
  diameter: electrodes,
  coreDiameter: electrodes,
  electrodeLength: lengths('14', '350'),
  stub: lengths('2', '50'),
  consumedLength: lengths('10 10-1/2 11 11-1/2 12', '250 260 270 280 300'),
  thickness: plates,
  leg: legs,
  runOut: runOuts,
  beadLength: lengths('5 6 7 8 9 10', '130 150 175 200 225 250'),
  width: lengths('1/4 5/16 3/8 7/16 1/2', '6 8 10 11 12'),
  height: lengths('1/16 5/64 3/32 1/8', '1.5 2 2.5 3'),
  overlap: ['30', '35', '40', '45', '50', '55'].map((text) => `${text} percent`),
  length: lengths('6 7 8 10 12 18 24', '150 180 200 250 300 450 600'),
  rootOpening: lengths('1/8 3/16 1/4', '3 4 5 6'),
  rootFace: lengths('1/16 3/32 1/8', '1.5 2 2.5 3'),
  includedAngle: ['45 deg', '60 deg'],
  bevelAngle: ['37.5 deg'],
  clockAngle: steps(15, 345, 15, 'deg'),
  pipeInclination: steps(0, 90, 15, 'deg'),
  efficiency: ['0.8'],
  density: { us: ['0.2836 lb/in3'], metric: ['7850 kg/m3'] },
  recovery: ['0.65', '0.7', '0.75'],
  coatingFraction: ['0.3'],
  current: steps(85, 175, 5, 'A'),
  arcTime: steps(45, 100, 5, 's'),
  travelSpeed: sizes('4 4.5 5 5.5 6 6.5 7 7.5 8', '100 115 125 140 150 165 175 190 200', [
    'in/min',
    'mm/min',
  ]),
  startTemperature: {
    us: ['68 degF', '150 degF', '225 degF', '300 degF'],
    metric: ['20 degC', '75 degC', '100 degC', '150 degC'],
  },
};
