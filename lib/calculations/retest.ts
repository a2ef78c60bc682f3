import { type Citation, defineProcedure, type Reason } from '../calculation.ts';
import { NoAnswer } from '../no-answer.ts';

const looked = 'looking';
const structural = (at: string): Citation => ({ source: 'aws-d1.1', at, known: 'memory' });
const nine = (at: string): Citation => ({ source: 'asme-ix', at, known: 'memory' });

const practiced: Record<'AWS D1.1' | 'ASME IX', { each: number; needs: string; cite: Citation }> = {
  'AWS D1.1': {
    each: 1,
    needs:
      'Evidence of further training or practice, then a whole new test of each kind and position that failed',
    cite: structural('2020 clause 6.25.1.2, 2015 clause 4.33.1.2'),
  },
  'ASME IX': {
    each: 1,
    needs: 'Further training or practice, then a new test in each position that failed',
    cite: nine('QW-321.4'),
  },
};
const atOnce: Record<'AWS D1.1' | 'ASME IX', { each: number; needs: string; cite: Citation }> = {
  'AWS D1.1': {
    each: 2,
    needs:
      'Two welds of each kind and position that failed, and every specimen of all of them passes',
    cite: structural('2020 clause 6.25.1.1, 2015 clause 4.33.1.1'),
  },
  'ASME IX': {
    each: 2,
    needs: 'Two coupons in a row in each position that failed, and both pass',
    cite: nine('QW-321.2'),
  },
};

export default defineProcedure({
  title: 'After a failed test',
  summary:
    'What a welder must weld again, and how much of it must pass, at once or after training.',
  inputs: {
    code: {
      label: 'Code',
      choices: ['AWS D1.1', 'ASME IX'],
      example: 'AWS D1.1',
      obtain: 'The contract names it, with its edition.',
    },
    when: {
      label: 'The next try comes',
      choices: ['at once', 'after training'],
      example: 'at once',
      obtain: 'Training or practice counts when it is written down, with dates.',
    },
    reason: {
      label: 'The test was',
      choices: ['a first test', 'after six months without the process'],
      example: 'a first test',
      default: 'a first test',
      obtain: 'From the record: was the qualification new, or one that had ended?',
    },
    failed: {
      label: 'What failed',
      list: {
        test: {
          label: 'Test position',
          choices: ['1G', '2G', '3G', '4G', '5G', '6G', '1F', '2F', '3F', '4F', '5F'],
          example: '3G',
          obtain: 'Stamped on the coupon and on the record.',
        },
        form: {
          label: 'Welded on',
          choices: ['plate', 'pipe'],
          example: 'plate',
          obtain: 'What the coupon was made of.',
        },
        by: {
          label: 'It failed by',
          choices: [looked, 'bend, break or section', 'radiograph'],
          example: 'bend, break or section',
          obtain: 'From the record: the examination at which it stopped.',
        },
      },
      example: [{ test: '3G', form: 'plate', by: 'bend, break or section' }],
      obtain: 'One row for each coupon that failed.',
    },
  },
  outputs: {
    coupons: { label: 'Coupons to weld', unit: '1', digits: 4 },
    toWeld: {
      label: 'One by one',
      list: {
        weld: { label: 'Weld', text: true },
        count: { label: 'Coupons', unit: '1' },
        pass: { label: 'Must pass', text: true },
      },
    },
    needs: { label: 'The rule', text: true },
  },
  beware: [
    'The examiner decides, by the edition of the contract. A shop or an owner may ask for more.',
    'A coupon that failed has told you something. Without time to use it, the second try tells you the same again (common practice).',
  ],
  cite: [atOnce['AWS D1.1'].cite, practiced['AWS D1.1'].cite, nine('QW-321')],
  related: ['continuity', 'bent-specimen'],
  compute({ code, when, reason, failed }) {
    const again = reason === 'after six months without the process';
    if (failed.length === 0) throw new NoAnswer('What failed: nothing is listed', 'failed');
    if (code === 'AWS D1.1' && again && when === 'at once')
      throw new NoAnswer(
        'At once is not open when a requalification has failed: AWS D1.1 asks for further training and practice first (2015 clause 4.33.1.4, from memory)',
        'when',
      );
    const { each, needs, cite } = (when === 'at once' ? atOnce : practiced)[code];
    const kinds = [...new Set(failed.map(({ test, form }) => `${test} on ${form}`))];
    const toWeld = kinds.map((weld) => ({
      weld,
      count: each,
      pass: each === 2 ? 'both, every specimen' : 'every specimen',
    }));
    const because: Reason[] = [{ kind: 'rule', text: `${needs}.`, cite }];
    if (kinds.length < failed.length)
      because.push({ kind: 'rule', text: 'Coupons of one kind and position count once.', cite });
    if (code === 'ASME IX' && when === 'at once') {
      if (failed.some(({ by }) => by === looked))
        because.push({
          kind: 'rule',
          text: 'Failed by looking: both new coupons pass by looking first; the examiner then picks one of them for the bends.',
          cite: nine('QW-321.2(a)'),
        });
      if (failed.some(({ by }) => by === 'radiograph'))
        because.push({
          kind: 'rule',
          text: 'Failed by radiograph: two plates of {6 in|150 mm} each, or pipes with twice the first length and at least {12 in|300 mm} of weld.',
          cite: nine('QW-321.3'),
        });
    }
    if (code === 'AWS D1.1' && again)
      because.push({
        kind: 'rule',
        text: 'The test that reopens an ended qualification may be on {3/8 in|10 mm} plate, whatever thickness it covers.',
        cite: structural('2020 clause 6.25, 2015 clause 4.33.1.3'),
      });
    return { coupons: kinds.length * each, toWeld, needs, because };
  },
});
