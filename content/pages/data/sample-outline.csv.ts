import { ownOutlineAsCsv } from '../../../lib/outlines/own-outline.ts';

/** An invented outline, to try the page on. */
const topics = [
  ['A1', 'Personal protection and hot work'],
  ['A2', 'Setting up a stick welding booth'],
  ['B1', 'Storing low-hydrogen electrodes'],
  ['B2', 'Fillet welds, horizontal and vertical'],
  ['B3', 'Reading weld symbols'],
  ['C1', 'Visual inspection of a finished weld'],
  ['C2', 'Flame cutting of bevels'],
  ['D1', 'Plate test in the vertical position'],
  ['D2', 'Root pass on pipe'],
].map(([code = '', topic = '']) => ({ code, topic, lessons: [] }));

export const GET = () => new Response(ownOutlineAsCsv(topics));
