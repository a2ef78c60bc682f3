/** What comes in rows: a can's log, readings of a dial, openings of a strap, coupons that failed. */
import type { Scene } from '../scene.ts';

const opened = (at: string) => ({ typed: [{ event: 'opened', at }], said: at });
const clock = (at: string) => ({ typed: at, said: at });
const readings = (...pairs: readonly [dial: string, meter: string][]) => ({
  typed: pairs.map(([dial, meter]) => ({ dial, meter })),
  said: pairs
    .map(([dial, meter]) => `{${dial} A} on the dial, {${meter} A} on the meter`)
    .join('; '),
});
const openings = (said: string, ...rows: readonly [size: string, place: string][]) => ({
  typed: rows.map(([size, place]) => ({ size, place, cause: 'none seen' })),
  said,
});
const failed = (said: string, ...rows: readonly [test: string, by: string][]) => ({
  typed: rows.map(([test, by]) => ({ test, form: 'plate', by })),
  said,
});
const bends = 'bend, break or section';

export default {
  'electrode-exposure': [
    {
      told: [
        'A can of {classification}{designator} is opened at {events} and stays out. It is {now}.',
        'At {now} you look at electrodes marked {classification}{designator}; their can was opened at {events}, and they have been out since.',
      ],
      asked: {
        hoursLeft: 'How long may they still be out?',
        mayReturnToOven: 'May they go back into the holding oven?',
      },
      values: {
        classification: ['E7018'],
        designator: [
          { typed: 'none', said: '' },
          { typed: 'H4R', said: ' H4R' },
        ],
        events: [opened('18:00'), opened('18:15'), opened('18:30')],
        now: [clock('19:15'), clock('20:30'), clock('21:45'), clock('22:45')],
      },
    },
  ],
  'booth-calibration': [
    {
      told: [
        'You hold the dial of a booth beside a clamp meter: {readings}. You want {wanted}.',
        'A clamp meter goes round the lead while a partner welds: {readings}. The procedure asks for {wanted}.',
      ],
      asked: { setDial: ['Where do you set the dial?', 'What do you set on the dial?'] },
      values: {
        readings: [
          readings(['90', '86'], ['125', '118'], ['160', '151']),
          readings(['80', '84'], ['120', '126'], ['160', '168']),
          readings(['90', '82'], ['130', '122'], ['170', '162']),
          readings(['100', '97'], ['140', '135']),
        ],
        wanted: ['115 A', '120 A', '125 A', '130 A', '140 A'],
      },
    },
  ],
  'bent-specimen': [
    {
      told: [
        'A bent strap lies before you, its weld wholly in the bend: {openings}. No slag is seen.',
        'A strap came round whole, its weld wholly in the bend, and you measure on the outside of the curve: {openings}, without any slag.',
      ],
      asked: {
        verdictD11: 'Does it pass under AWS D1.1?',
        verdictIX: 'Does it pass under ASME IX?',
      },
      values: {
        weldInBend: ['yes'],
        broke: ['no'],
        openings: {
          us: [
            openings('one opening of {1/16 in} on the face', ['1/16 in', 'face']),
            openings('one opening of {3/16 in} on the face', ['3/16 in', 'face']),
            openings(
              'two openings of {3/32 in} on the face',
              ['3/32 in', 'face'],
              ['3/32 in', 'face'],
            ),
            openings('one crack of {3/16 in} at the corner', ['3/16 in', 'corner']),
            openings('one crack of {5/16 in} at the corner', ['5/16 in', 'corner']),
          ],
          metric: [
            openings('one opening of {1.5 mm} on the face', ['1.5 mm', 'face']),
            openings('one opening of {5 mm} on the face', ['5 mm', 'face']),
            openings(
              'two openings of {2.5 mm} on the face',
              ['2.5 mm', 'face'],
              ['2.5 mm', 'face'],
            ),
            openings('one crack of {5 mm} at the corner', ['5 mm', 'corner']),
            openings('one crack of {8 mm} at the corner', ['8 mm', 'corner']),
          ],
        },
      },
    },
  ],
  retest: [
    {
      told: [
        'By {code}: {failed}. The next try comes {when}.',
        'A first test under {code} ends so: {failed}. The welder tries again {when}.',
      ],
      asked: {
        coupons: ['How many coupons are to be welded?', 'How many coupons does the welder weld?'],
      },
      values: {
        failed: [
          failed('one 3G plate failed its bends', ['3G', bends]),
          failed('one 2G plate failed by looking', ['2G', 'looking']),
          failed('a 3G plate and a 4G plate failed their bends', ['3G', bends], ['4G', bends]),
        ],
        when: ['at once', 'after training'],
      },
    },
  ],
} satisfies Readonly<Record<string, readonly Scene[]>>;
