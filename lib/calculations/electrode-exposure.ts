import { defineProcedure } from '../calculation.ts';
import { exposureStates, logEvents } from '../exposure/exposure-log.ts';
import { exposureNow } from '../exposure/exposure-now.ts';
import { exposureTrace } from '../exposure/exposure-trace.ts';
import { holdRule, rebakeRuleOf, tagRule } from '../exposure/oven-rules.ts';
import { printedOnElectrode } from '../inputs/classification.ts';
import { classifications } from '../tables/classifications.ts';
import { bakeOf, lowAlloyRows } from '../tables/exposure-d1.1.ts';
import { durationText, wallClock } from '../text/clock-text.ts';

export default defineProcedure({
  title: 'Electrodes out of the oven',
  summary:
    'From the log of a can or quiver: are these low-hydrogen electrodes still dry, and what may be done with them?',
  inputs: {
    classification: {
      ...printedOnElectrode.classification,
      choices: [...classifications, ...lowAlloyRows],
      obtain:
        'Printed near the grip end of each electrode and on the box: E and four digits, then perhaps -1 or M. A letter after the dash, as in E8018-C3, is a low-alloy electrode of A5.5: take the row of its strength, E80XX-X.',
    },
    designator: { ...printedOnElectrode.designator, example: 'none' },
    events: {
      label: 'Log of this can or quiver',
      list: {
        event: {
          label: 'What happened',
          choices: logEvents,
          example: 'out',
          obtain:
            'opened: the container. out: issued, or left in open air. in oven: into a holding oven. rebaked: a bake at high temperature. wet: by rain, water or dew. tagged: marked for practice only.',
        },
        at: {
          label: 'When',
          symbol: 't',
          unit: 'h',
          limits: { min: 0, max: 8784, why: 'a log runs for a year at most' },
          example: '18:15',
          obtain:
            'Clock time such as 18:15, or hours from the start. Past midnight count on: 1:00 is 25:00.',
        },
        temperature: {
          label: 'Oven temperature',
          symbol: 'T',
          printed: { us: 'degF', metric: 'degC' },
          limits: { min: 32, max: 1500, why: 'no electrode oven is colder or hotter' },
          example: { us: '250', metric: '120' },
          optional: true,
          obtain: 'Thermometer of the oven, not its dial. Only for a row with an oven.',
        },
        hours: {
          label: 'Hours in the oven',
          symbol: 'h',
          unit: 'h',
          limits: { min: 0, max: 8784, why: 'a log runs for a year at most' },
          example: '4',
          optional: true,
          obtain:
            'How long they stayed at temperature. Left out for a holding oven, they stay until the next row.',
        },
      },
      example: [
        { event: 'opened', at: '18:15' },
        { event: 'in oven', at: '21:00', temperature: '275 °F' },
      ],
      obtain:
        'One row for each thing that happened, in order. Log the can or the quiver: nobody logs single electrodes.',
    },
    now: {
      label: 'The moment you ask about',
      symbol: 't_now',
      unit: 'h',
      limits: { min: 0, max: 8784, why: 'a log runs for a year at most' },
      example: '22:00',
      optional: true,
      obtain: 'The clock on the wall. Left out, it is the end of the last row.',
    },
  },
  outputs: {
    state: { label: 'State', words: exposureStates },
    hoursOut: { label: 'On the clock if they come out now', unit: 'h', digits: 3 },
    hoursLeft: { label: 'Left on the clock', unit: 'h', digits: 3 },
    mayReturnToOven: { label: 'May go back into the holding oven', yes: true },
    mayRebake: { label: 'May be rebaked', yes: true },
    backBy: { label: 'Back in the oven by', text: true, optional: true },
    readyFrom: { label: 'Ready to issue at', text: true, optional: true },
    reasons: { label: 'What each row did', list: { reason: { label: 'Reason', text: true } } },
    trace: { label: 'The clock through the log', shape: true },
  },
  beware: [
    'The contract’s code, the welding procedure and the maker’s label rule. Owners may ask for shorter times.',
    'A damp electrode can look and run perfectly well. Only the log knows.',
    'The stronger low-alloy electrodes of A5.5, such as E8018-C3, have shorter times: E80XX-X and the rows after it.',
  ],
  cite: [
    { source: 'aws-d1.1', at: '2015 clause 5.3.2 and Table 5.1; 2020 clause 7.3.2', known: 'read' },
    { source: 'aws-a5.1', at: 'R designator', known: 'read' },
  ],
  related: ['electrode-classification', 'oven-load'],
  compute({ classification, designator, events, now }) {
    const found = exposureNow({ classification, designator, events, now });
    const { row, limit, cite, next } = found;
    return {
      state: found.state,
      hoursOut: found.hoursOut,
      hoursLeft: found.hoursLeft,
      mayReturnToOven: found.mayReturnToOven,
      mayRebake: found.mayRebake,
      backBy: found.backBy === undefined ? undefined : wallClock(found.backBy),
      readyFrom: found.readyFrom === undefined ? undefined : wallClock(found.readyFrom),
      reasons: [...found.reasons, next].map((reason) => ({ reason })),
      trace: exposureTrace(limit, events, found.until, bakeOf(classification)),
      because: [
        { kind: 'row', text: `${row}: at most ${durationText(limit)} in open air.`, cite },
        holdRule,
        rebakeRuleOf(bakeOf(classification)),
        tagRule,
      ],
    };
  },
});
