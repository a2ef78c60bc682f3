import { defineProcedure } from '../calculation.ts';
import { eveningIssues } from '../exposure/evening-issues.ts';
import { refuseOvenAdvice } from '../exposure/low-hydrogen-only.ts';
import { holdRule } from '../exposure/oven-rules.ts';
import { printedOnElectrode } from '../inputs/classification.ts';
import { evening } from '../inputs/evening.ts';
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
    ...evening,
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
    const issues = eveningIssues(given, hours);
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
