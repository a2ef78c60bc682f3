import { defineProcedure, type Reason } from '../calculation.ts';
import { visualReadings } from '../inputs/visual-readings.ts';
import { visualItems } from '../inspection/visual-items.ts';
import { NoAnswer } from '../no-answer.ts';

export default defineProcedure({
  title: 'Visual check',
  summary:
    'Gauge readings against a code’s limits, item by item, for a weld or a welder’s test coupon.',
  inputs: visualReadings,
  outputs: {
    verdict: {
      label: 'All together',
      words: ['passes', 'fails', 'not complete: some items were not read'],
    },
    items: {
      label: 'Item by item',
      list: {
        item: { label: 'Item', text: true },
        verdict: { label: 'Verdict', text: true },
        reading: { label: 'Reading', text: true },
        limit: { label: 'Limit', text: true },
        known: { label: 'The limit is known', text: true },
      },
    },
  },
  beware: [
    'A qualified inspector decides, by the edition of the contract. Look after the weld has cooled to the temperature of the shop.',
    'No grinding on the cover pass before the visual check (shop rule).',
  ],
  cite: [
    { source: 'aws-d1.1', at: '2000 and 2004 Table 6.1; 8.1 in 2020', known: 'read' },
    {
      source: 'aws-d1.1',
      at: '4.8.1 and 4.30.1 (2000), 6.10.1 (2020), as quoted',
      known: 'read',
    },
    { source: 'asme-b31.3', at: '1996 Table 341.3.2', known: 'read' },
    { source: 'asme-ix', at: 'QW-194', known: 'memory' },
  ],
  related: ['fillet-profile', 'test-range'],
  compute(given) {
    if (given.code === 'ASME IX' && given.purpose !== 'welder’s test coupon')
      throw new NoAnswer(
        'ASME IX judges test coupons only; production welds go by the construction code',
        'purpose',
      );
    if (given.code === 'ASME B31.3' && given.purpose === 'welder’s test coupon')
      throw new NoAnswer(
        'ASME B31.3 judges the welds of a piping system; a test coupon goes by ASME IX',
        'purpose',
      );
    const found = visualItems(given);
    const verdicts = found.map(({ verdict }) => verdict);
    const verdict = verdicts.includes('fail')
      ? 'fails'
      : verdicts.includes('cannot be judged from this')
        ? 'not complete: some items were not read'
        : 'passes';
    const because: Reason[] = found.map(({ item, verdict: one, limit, cite }) => ({
      kind: one === 'fail' ? 'caution' : 'row',
      text: `${item}: ${one}. Limit: ${limit}.`,
      cite,
    }));
    return {
      verdict,
      items: found.map(({ item, verdict: one, reading: read, limit, cite }) => ({
        item,
        verdict: one,
        reading: read,
        limit,
        known: cite.known,
      })),
      because,
    };
  },
});
