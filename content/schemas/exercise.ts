import { z } from 'astro/zod';
import { knownMarks } from '../../components/Known/known-marks.ts';
import { sources } from '../../lib/sources.ts';
import { electrode } from './electrode.ts';
import { heading, id, idList, joint, keysOf, position, quantity, sentence } from './words.ts';

const known = z.enum(keysOf(knownMarks)).describe('How the value came to stand here.');
const count = z.number().int().positive();

const piece = z.strictObject({
  piece: z.enum(['flat bar', 'plate', 'backing bar', 'pipe']).describe('What is cut.'),
  section: z.string().optional().describe('Thickness and width, "3/8 in x 4 in"; not for pipe.'),
  nps: z.string().optional().describe('Nominal pipe size, "6"; pipe only.'),
  schedule: z.string().optional().describe('Schedule, "80"; pipe only.'),
  length: quantity.describe('Length of one piece.'),
  count: count.describe('Pieces in one coupon.'),
  steel: z.string().describe('Designation of the steel.'),
  sides: z
    .literal(2)
    .optional()
    .describe('2 where one attempt welds one side only, so that the piece can serve twice.'),
  bevel: z
    .enum(['here', 'bought'])
    .optional()
    .describe('Who bevels it: the class, or the supplier; none for square edges.'),
  lines: count.optional().describe('Lines drawn on one side to lay single beads on.'),
  note: sentence.optional().describe('How it is prepared: bevel, scale off, edge ground.'),
});

const computedCount = z.strictObject({
  of: id.describe('Id of the calculation.'),
  given: z
    .record(z.string(), z.union([z.string(), z.number()]).transform(String))
    .describe('Its inputs as a reader would type them.'),
  output: z.string().describe('The output that counts electrodes.'),
  times: count.optional().describe('How often that is burned: sides, layers, coupons.'),
});

const electrodes = electrode
  .extend({
    for: z.string().optional().describe('Which passes it is for: root, fill and cover.'),
    current: quantity.optional().describe('Its current, where it is not the one of the procedure.'),
    currentRange: z
      .tuple([quantity, quantity])
      .optional()
      .describe('Its lowest and highest current.'),
    count: count.optional().describe('Electrodes for one attempt.'),
    computed: computedCount.optional().describe('Stands in place of count where it is computed.'),
  })
  .refine((it) => (it.count === undefined) !== (it.computed === undefined), {
    error: 'either count or computed, and not both',
  });

const procedure = z.strictObject({
  steel: z.string().describe('Steel it is written for.'),
  current: quantity.describe('Current to start from.'),
  currentRange: z.tuple([quantity, quantity]).describe('Lowest and highest current.'),
  voltage: z
    .strictObject({ from: quantity, to: quantity, known })
    .describe('Arc voltage to expect, measured from jaw to work.'),
  speed: z
    .strictObject({ from: quantity, to: quantity, known })
    .optional()
    .describe('Travel speed to expect in most passes; none for tacks and trials of an instructor.'),
  polarity: z.enum(['DCEP', 'DCEN', 'AC']).describe('DCEP: electrode positive.'),
  position: z.string().describe('Position in the words or the code of the trade: 2F, 3G.'),
  progression: z.enum(['uphill', 'downhill', 'none']).describe('Direction of vertical travel.'),
  preheat: sentence.describe('Lowest temperature before welding, or that none is asked for.'),
  interpass: z
    .strictObject({ max: quantity.describe('Highest temperature before the next pass.'), known })
    .describe('Temperature between passes.'),
  cleaning: sentence.describe('What is cleaned, with what, and when.'),
  technique: sentence.describe('Stringer or weave, angles, arc length.'),
});

const criterion = z.strictObject({
  item: z.string().describe('What is looked at: undercut, size, porosity.'),
  limit: sentence.describe('What passes, as a sentence.'),
  amount: quantity.optional().describe('The figure in that sentence, as the source prints it.'),
  metric: quantity.optional().describe('The metric figure, only where the source prints one.'),
  source: z
    .enum(keysOf(sources))
    .optional()
    .describe('The id of a publication in lib/sources.ts; none for common practice.'),
  at: z.string().optional().describe('Clause or table there.'),
  known,
});

const numbers = z.strictObject({
  of: id.describe('Id of the calculation.'),
  given: z
    .record(z.string(), z.union([z.string(), z.number()]).transform(String))
    .describe('Its inputs as a reader would type them.'),
  want: z.array(z.string()).min(1).describe('The outputs to hit, by name.'),
  drawing: z.literal(true).optional().describe('Its drawing shows the coupon; once an exercise.'),
});

/** content/exercises/<slug>.yaml: one task at the booth. Unknown keys are refused. */
export const exerciseSchema = z.strictObject({
  title: heading.describe('Name of the exercise.'),
  lesson: id.describe('The lesson it belongs to.'),
  station: z
    .enum(['booth', 'side'])
    .default('booth')
    .describe('side: saw, grinder, gauge or paper, done while others weld.'),
  position: z.array(position).describe('Welding positions; empty where nothing is welded.'),
  joint: z.array(joint).describe('Joints or pad; empty where nothing is welded.'),
  summary: sentence.describe('One sentence: what is welded and what it trains.'),
  coupon: z.array(piece).describe('Metal that one attempt uses up; empty where another pays.'),
  passes: count
    .optional()
    .describe('Passes in each weld of the coupon, where a tee carries several.'),
  metalFrom: idList
    .optional()
    .describe('The exercises whose metal is used here, and counted there.'),
  electrodes: z.array(electrodes).describe('Electrodes for one attempt.'),
  minutes: count.describe('Minutes at its station for one attempt.'),
  attempts: count.describe('Attempts that the class plan allows for.'),
  procedure: procedure
    .optional()
    .describe('The practice procedure on one page; none without an arc.'),
  numbers: z
    .array(numbers)
    .default([])
    .describe('What the library computes for it: numbers to hit, and the drawing of the coupon.'),
  steps: z.array(sentence).min(1).describe('What to do, in order.'),
  holdPoints: z.array(sentence).describe('Where to stop until somebody has looked.'),
  questions: z
    .array(
      z.strictObject({
        ask: sentence.describe('What the instructor asks.'),
        answer: sentence.describe('What has to be in the answer.'),
      }),
    )
    .optional()
    .describe('A test on paper or by word of mouth; the answers are for the instructor.'),
  handIn: sentence.describe('What is handed in, and how it is marked.'),
  selfCheck: z.array(sentence).describe('What the learner looks at first.'),
  grading: z.array(criterion).min(1).describe('What the coupon is judged by.'),
  practises: idList.describe('Skills used here.'),
  assesses: idList.describe('Skills that a pass shows.'),
});

export type Exercise = z.infer<typeof exerciseSchema>;
