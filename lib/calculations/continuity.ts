import { type Citation, defineProcedure, type Reason } from '../calculation.ts';
import { daysBetween } from '../calendar.ts';
import { type ContinuityCode, follow } from '../kept-alive.ts';
import { NoAnswer } from '../no-answer.ts';

const processes = ['SMAW', 'GTAW', 'GMAW', 'FCAW', 'SAW'] as const;
const process = {
  label: 'Process',
  choices: processes,
  example: 'SMAW',
  obtain: 'Stick is SMAW. The record names it; each process has a clock of its own.',
} as const;

const structural: Citation = {
  source: 'aws-d1.1',
  at: '2020 clause 6.2.3.1, 2015 clause 4.2.3.1',
  known: 'memory',
};
const vessels: Citation = { source: 'asme-ix', at: 'QW-322.1', known: 'memory' };

const rules: Record<ContinuityCode, { ends: Reason; revives: Reason }> = {
  'AWS D1.1': {
    ends: {
      kind: 'rule',
      text: 'It ends when the welder has not used the process for more than six months, or when there is a reason to doubt the welder’s skill.',
      cite: structural,
    },
    revives: {
      kind: 'rule',
      text: 'Once ended, a new test opens it again; a plate of {3/8 in|10 mm} is enough, whatever thickness was qualified.',
      cite: { ...structural, at: '2020 clauses 6.2.3.1 and 6.25, 2015 clause 4.33' },
    },
  },
  'ASME IX': {
    ends: {
      kind: 'rule',
      text: 'It ends when the welder has not used the process for six months or more, or when there is a reason to doubt the welder’s skill.',
      cite: vessels,
    },
    revives: {
      kind: 'rule',
      text: 'Once ended, one coupon with the process, of any material, size and position, renews all that was qualified with it.',
      cite: { ...vessels, at: 'QW-322.2' },
    },
  },
};

export default defineProcedure({
  title: 'Six months: is the qualification alive?',
  summary:
    'From the day of the test and the days of use: is a welder’s qualification still current, and until when?',
  inputs: {
    code: {
      label: 'Code',
      choices: ['AWS D1.1', 'ASME IX'],
      example: 'AWS D1.1',
      obtain: 'The contract names it, with its edition.',
    },
    process,
    qualified: {
      label: 'Day of the test',
      date: true,
      example: '2026-03-02',
      obtain: 'From the signed record: the test, or the last renewal.',
    },
    uses: {
      label: 'Days on which a process was used',
      list: {
        process,
        on: {
          label: 'Day',
          date: true,
          example: '2026-06-15',
          obtain: 'From the continuity log: a weld that somebody saw.',
        },
      },
      optional: true,
      example: [
        { process: 'SMAW', on: '2026-06-15' },
        { process: 'GMAW', on: '2026-09-01' },
      ],
      obtain: 'From the continuity log. One row for each month is enough.',
    },
    on: {
      label: 'The day you ask about',
      date: true,
      example: '2026-08-15',
      obtain: 'Today, or the day of the next job.',
    },
  },
  outputs: {
    state: { label: 'State', words: ['current', 'ended'] },
    currentUntil: { label: 'Good through', text: true },
    daysLeft: { label: 'Days left', unit: '1', digits: 4 },
    lastUse: { label: 'Counted from', text: true },
    keepIt: { label: 'What keeps it', text: true },
  },
  beware: [
    'A draft for the one who keeps the record. The contract’s code and edition decide.',
    'Months are counted by the calendar: six months from the 15th end on the 15th. Where a month is too short its last day stands, so August 31 gives the last of February (our reading; the codes do not say).',
    'The evidence counts, not the memory: day, process, job, and who saw it.',
  ],
  cite: [structural, vessels],
  related: ['retest', 'test-range'],
  compute({ code, process: wanted, qualified, uses = [], on }) {
    if (on < qualified) throw new NoAnswer(`${on} lies before the test, ${qualified}`, 'on');
    const counted = uses.filter((use) => use.process === wanted && use.on <= on);
    const { last, until, tooLate } = follow(
      code,
      qualified,
      counted.map((use) => use.on),
    );
    const current = on <= until;
    const { ends, revives } = rules[code];
    const because: Reason[] = [
      ends,
      { kind: 'row', text: `Counted from ${last}: good through ${until}.` },
    ];
    if (tooLate)
      because.push({
        kind: 'caution',
        text: `${tooLate} came after ${until}, when it had ended. Use does not bring it back.`,
      });
    for (const use of uses) {
      if (use.process !== wanted)
        because.push({
          kind: 'passed',
          text: `${use.on}: ${use.process} does not keep ${wanted}.`,
          cite: ends.cite,
        });
      else if (use.on > on)
        because.push({ kind: 'passed', text: `${use.on} lies after the day you ask about.` });
      else if (use.on < qualified)
        because.push({ kind: 'passed', text: `${use.on} lies before the test.` });
    }
    if (!current) because.push(revives);
    because.push({
      kind: 'rule',
      text: 'The codes part by one day: at six months to the day AWS D1.1 still holds, ASME IX does not.',
      cite: code === 'AWS D1.1' ? vessels : structural,
    });
    return {
      state: current ? 'current' : 'ended',
      currentUntil: until,
      daysLeft: current ? daysBetween(on, until) : 0,
      lastUse: last === qualified ? `${last}, the test` : `${last}, used`,
      keepIt: current
        ? `One weld with ${wanted} by ${until}, written down with the name of who saw it`
        : `Nothing does: it ended after ${until}. A new test opens it again`,
      because,
    };
  },
});
