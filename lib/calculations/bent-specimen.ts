import { defineProcedure, type Reason } from '../calculation.ts';
import { type BentItem, itemsD11, itemsIX } from '../inspection/bent-items.ts';
import { bendD11, bendIX } from '../tables/bend-limits.ts';

const verdicts = ['passes', 'fails', 'does not count: bend another strap'] as const;

export default defineProcedure({
  title: 'Judging a bent strap',
  summary:
    'From the openings on the stretched side: does the strap pass under AWS D1.1, and under ASME IX?',
  inputs: {
    openings: {
      label: 'Openings, one by one',
      list: {
        size: {
          label: 'Longest dimension',
          symbol: 'a',
          printed: { us: 'in', metric: 'mm' },
          limits: { min: 0, max: 6, why: 'no strap is wider' },
          example: { us: '1/16', metric: '1.5' },
          obtain: 'In whichever direction it is longest, with scale and lamp.',
        },
        place: {
          label: 'Where',
          choices: ['face', 'corner'],
          example: 'face',
          obtain:
            'corner: it starts at the long edge of the strap. face: anywhere else on the curve.',
        },
        cause: {
          label: 'Seen inside it',
          choices: ['none seen', 'slag or incomplete fusion'],
          example: 'none seen',
          default: 'none seen',
          obtain: 'Look into it with a lens. Only corner cracks are judged by this.',
        },
      },
      example: [
        { size: '1/16 in', place: 'face', cause: 'none seen' },
        { size: '3/32 in', place: 'face', cause: 'none seen' },
        { size: '3/16 in', place: 'corner', cause: 'none seen' },
      ],
      obtain:
        'Look at the outside of the curve. Leave out what is smaller than you can measure; a clean strap has no rows.',
    },
    weldInBend: {
      label: 'Weld and heated zone lie wholly in the bend',
      choices: ['yes', 'no'],
      example: 'yes',
      default: 'yes',
      obtain: 'Look from the side. Where the weld slid out of the bend it was not tested.',
    },
    broke: {
      label: 'The strap broke',
      choices: ['no', 'yes'],
      example: 'no',
      default: 'no',
      obtain: 'In two, or so far that it no longer holds together.',
    },
  },
  outputs: {
    verdictD11: { label: 'Under AWS D1.1', words: verdicts },
    verdictIX: { label: 'Under ASME IX', words: verdicts },
    items: {
      label: 'Item by item',
      list: {
        code: { label: 'Code', text: true },
        item: { label: 'Item', text: true },
        verdict: { label: 'Verdict', text: true },
        reading: { label: 'Reading', text: true },
        limit: { label: 'Limit', text: true },
        known: { label: 'The limit is known', text: true },
      },
    },
  },
  beware: [
    'A qualified person judges the strap, by the edition of the contract.',
    'A corner crack with slag or incomplete fusion in it is counted as an opening, in the sum too. That is the stricter reading.',
    'At the press: guard in place, glasses and face shield, nobody in line with the strap.',
  ],
  cite: [bendD11.cite, bendIX.cite],
  related: ['bend-strain', 'retest'],
  compute({ openings, weldInBend, broke }) {
    const structural = itemsD11(openings);
    const vessels = itemsIX(openings);
    const because: Reason[] = [...structural, ...vessels].map(
      ({ code, item, verdict, limit, cite }) => ({
        kind: verdict === 'pass' ? 'row' : 'caution',
        text: `${code}, ${item.toLowerCase()}: ${verdict}. Limit: ${limit}.`,
        cite,
      }),
    );
    if (broke === 'yes')
      because.unshift({ kind: 'caution', text: 'A strap that broke has failed under both codes.' });
    if (weldInBend === 'no')
      because.unshift({
        kind: 'caution',
        text: 'Weld and heated zone must lie wholly in the bend, or the strap tested something else.',
        cite: bendIX.cite,
      });
    const together = (items: readonly BentItem[]): (typeof verdicts)[number] => {
      const found = items.map(({ verdict }) => verdict);
      if (broke === 'yes' || found.includes('fail')) return 'fails';
      if (weldInBend === 'no' || found.includes('bend another strap'))
        return 'does not count: bend another strap';
      return 'passes';
    };
    return {
      verdictD11: together(structural),
      verdictIX: together(vessels),
      items: [...structural, ...vessels].map(({ cite, ...item }) => ({
        ...item,
        known: cite.known,
      })),
      because,
    };
  },
});
