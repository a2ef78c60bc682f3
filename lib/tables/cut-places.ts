/** Where the specimens of a welder's test are cut. The figure of the code decides. */
import type { Citation } from '../calculation.ts';
import type { Code, Form } from './test-positions.ts';

const cutCites: Readonly<Record<Code, Citation>> = {
  'AWS D1.1': { source: 'aws-d1.1', at: 'figures of the performance tests', known: 'memory' },
  'ASME IX': { source: 'asme-ix', at: 'QW-463.2, QW-302.3', known: 'memory' },
};

const filletCites: Readonly<Record<Code, Citation>> = {
  'AWS D1.1': { source: 'aws-d1.1', at: 'figures of the fillet tests', known: 'memory' },
  'ASME IX': { source: 'asme-ix', at: 'QW-462.4(b)', known: 'memory' },
};
/** The figure or clause that shows where the specimens of this test are cut. */
export const cutCite = (code: Code, test: string): Citation =>
  (/F/.test(test) ? filletCites : cutCites)[code];

/** A sentence for one position; from memory, so that it names no size. */
export function cutPlace(code: Code, form: Form, test: string): { text: string; cite: Citation } {
  const cite = cutCite(code, test);
  if (/F/.test(test))
    return {
      text: 'The stop and restart lies in the piece that is broken, clear of its ends.',
      cite,
    };
  if (form === 'plate')
    return { text: 'Across the weld, clear of both ends; the end strips are thrown away.', cite };
  if (/5G|6G/.test(test))
    return {
      text: 'One from each quarter of the pipe, about halfway between 12, 3, 6 and 9 o’clock.',
      cite,
    };
  return { text: 'Apart from each other on the circumference, as the code’s figure shows.', cite };
}
