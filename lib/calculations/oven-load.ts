import { defineProcedure } from '../calculation.ts';
import { refuseOvenAdvice } from '../exposure/low-hydrogen-only.ts';
import { holdRule } from '../exposure/oven-rules.ts';
import { printedOnElectrode } from '../inputs/classification.ts';
import { NoAnswer } from '../no-answer.ts';
import { exposureOf } from '../tables/exposure-d1.1.ts';
import { durationText, wallClock } from '../text/clock-text.ts';

export default defineProcedure({
  title: 'Electrodes for an evening',
  summary:
    'How many low-hydrogen electrodes a class needs, which containers to open, and what has to be back in the oven by when.',
  inputs: {
    ...printedOnElectrode,
    designator: { ...printedOnElectrode.designator, example: 'none' },
    booths: {
      label: 'Booths that weld',
      symbol: 'n',
      unit: '1',
      whole: true,
      limits: { min: 1, max: 500, why: 'a class has at least one booth' },
      example: '14',
      obtain: 'Count the booths with a learner in them tonight.',
    },
    perHour: {
      label: 'Electrodes that a booth burns in an hour',
      symbol: 'r',
      unit: '1',
      limits: { min: 0.1, max: 60, why: 'an electrode burns for about a minute' },
      usual: { min: 2, max: 15, why: 'learners burn 4 to 10 electrodes an hour' },
      example: '6',
      obtain: 'Count the stubs of one booth after an hour.',
    },
    firstArc: {
      label: 'First arc',
      symbol: 't_1',
      unit: 'h',
      limits: { min: 0, max: 48, why: 'a clock time' },
      example: '18:15',
      obtain: 'Clock time at which welding starts.',
    },
    lastArc: {
      label: 'Last arc',
      symbol: 't_2',
      unit: 'h',
      limits: { min: 0, max: 72, why: 'a clock time' },
      example: '21:00',
      obtain: 'Clock time at which welding ends. Past midnight count on: 1:00 is 25:00.',
    },
    issueEvery: {
      label: 'Issue for',
      symbol: 'i',
      unit: 'h',
      limits: { min: 0.25, max: 9, why: 'nobody issues oftener, and nothing stays out longer' },
      usual: {
        min: 0.25,
        max: 1,
        why: 'an hour’s worth at a time keeps most electrodes in the oven',
        cite: { source: 'common-practice', known: 'practice' },
      },
      example: '1',
      default: '1 h',
      obtain: 'You choose it. An hour’s worth at a time is a good shop rule.',
    },
    spare: {
      label: 'Spare, for stuck and broken electrodes',
      symbol: 's',
      unit: 'percent',
      limits: { min: 0, max: 200, why: 'more than that is another order' },
      example: '25',
      default: '25 percent',
      obtain: 'Beginners waste up to 40 %, later 15 %.',
    },
    electrodesPerContainer: {
      label: 'Electrodes in a container',
      symbol: 'c',
      unit: '1',
      whole: true,
      limits: { min: 1, max: 5000, why: 'a container holds at least one' },
      example: '140',
      obtain:
        'On the label, or its weight over the weight of one electrode: a 10 lb can of 1/8 in E7018 holds about 140.',
    },
    inOven: {
      label: 'Dry electrodes already in the oven',
      symbol: 'o',
      unit: '1',
      whole: true,
      limits: { min: 0, max: 100000, why: 'a count' },
      example: '60',
      default: '0',
      obtain: 'Count what stands in the oven with a whole hold behind it.',
    },
    ovenHolds: {
      label: 'Electrodes that the oven holds',
      symbol: 'C',
      unit: '1',
      whole: true,
      limits: { min: 0, max: 100000, why: 'a count' },
      example: '560',
      obtain: 'Its capacity in weight over the weight of one electrode: 14 of 1/8 in to the pound.',
    },
  },
  outputs: {
    electrodes: { label: 'Electrodes for the evening, spare included', unit: '1' },
    containers: { label: 'Containers to open', unit: '1' },
    left: { label: 'Left over at the end, if all goes as planned', unit: '1' },
    fits: { label: 'All that is opened fits into the oven', yes: true },
    issues: {
      label: 'What goes out when',
      list: {
        at: { label: 'Issue at', text: true },
        electrodes: { label: 'Electrodes', unit: '1' },
        perBooth: { label: 'To each booth', unit: '1' },
        backBy: { label: 'What is left of them back by', text: true },
      },
    },
  },
  beware: [
    'Open one container after the other, and put it into the oven at once: from the opening on the clock runs.',
    'What comes back needs a whole hold before it is issued again, so it serves the next evening, not this one.',
  ],
  cite: [
    { source: 'aws-d1.1', at: '2015 clause 5.3.2 and Table 5.1', known: 'read' },
    { source: 'common-practice', at: 'an hour’s worth at a time', known: 'practice' },
  ],
  related: ['electrode-exposure', 'electrode-classification'],
  compute(given) {
    const { classification, designator, booths, perHour, firstArc, lastArc, issueEvery } = given;
    refuseOvenAdvice(classification, designator);
    if (lastArc <= firstArc)
      throw new NoAnswer(
        'The last arc has to come after the first; past midnight count on: 1:00 is 25:00',
        'lastArc',
      );
    const { hours, row, cite } = exposureOf(classification, designator);
    if (issueEvery > hours)
      throw new NoAnswer(
        `They may be out for ${durationText(hours)} only; issue for less`,
        'issueEvery',
      );
    const issues = issuesOf(given, hours);
    const electrodes = issues.reduce((sum, issue) => sum + issue.electrodes, 0);
    const missing = Math.max(0, electrodes - given.inOven);
    const containers = Math.ceil(missing / given.electrodesPerContainer);
    const stock = given.inOven + containers * given.electrodesPerContainer;
    return {
      electrodes,
      containers,
      left: stock - electrodes,
      fits: stock <= given.ovenHolds,
      issues,
      because: [
        {
          kind: 'row',
          text: `${row}: at most ${durationText(hours)} in open air, so each issue has its own hour of return, and none stays out past the last arc.`,
          cite,
        },
        holdRule,
        ...(stock > given.ovenHolds
          ? [
              {
                kind: 'caution',
                text: 'The oven does not hold all of it. Keep the last containers sealed until there is room, or use a second oven.',
              } as const,
            ]
          : []),
        {
          text: `${booths} booths, ${perHour} an hour each, from ${wallClock(firstArc)} to ${wallClock(lastArc)}; each issue is rounded up so that every booth gets whole electrodes.`,
        },
      ],
    };
  },
});

interface Evening {
  booths: number;
  perHour: number;
  firstArc: number;
  lastArc: number;
  issueEvery: number;
  spare: number;
}

function issuesOf(
  { booths, perHour, firstArc, lastArc, issueEvery, spare }: Evening,
  limit: number,
) {
  const length = lastArc - firstArc;
  const count = Math.ceil(length / issueEvery - 1e-9);
  return Array.from({ length: count }, (_, index) => {
    const at = firstArc + index * issueEvery;
    const covers = Math.min(issueEvery, lastArc - at);
    const perBooth = Math.ceil(perHour * covers * (1 + spare / 100) - 1e-9);
    return {
      at: wallClock(at),
      electrodes: perBooth * booths,
      perBooth,
      backBy: wallClock(Math.min(at + limit, lastArc)),
    };
  });
}
