import { z } from 'astro/zod';
import { faultSigns } from '../../components/Faults/fault-signs.ts';
import { knownMarks } from '../../components/Known/known-marks.ts';
import { sources } from '../../lib/sources.ts';
import { readingOrder, type UnitId } from '../reading-order.ts';
import { electrode } from './electrode.ts';
import { hazards } from './hazards.ts';
import { heading, idList, joint, keysOf, position, sentence } from './words.ts';

const unitIds = readingOrder.map((unit) => unit.id) as [UnitId, ...UnitId[]];

const fault = z.strictObject({
  see: sentence.describe('What the eye finds on the bead or in the shop.'),
  sign: z.enum(keysOf(faultSigns)).describe('Under which sign the faults page lists it.'),
  cause: sentence.describe('What makes it.'),
  change: sentence.describe('What to do differently on the next bead.'),
});

const source = z.strictObject({
  source: z.enum(keysOf(sources)).describe('The id of a publication in lib/sources.ts.'),
  at: z.string().describe('Clause, table or page there.'),
  known: z.enum(keysOf(knownMarks)).describe('How the value came to stand here.'),
  for: z.string().describe('What it carries in this lesson.'),
});

/** The front matter of content/lessons/<slug>.mdx. Unknown keys are refused. */
export const lessonSchema = z.strictObject({
  title: heading.describe('The heading of the lesson, as a learner would say it.'),
  summary: sentence.describe('One sentence for lists of lessons and for search results.'),
  unit: z.enum(unitIds).describe('The unit of reading-order.ts in which it stands.'),
  minutes: z.number().int().positive().describe('Minutes of reading.'),
  boothHours: z.number().nonnegative().describe('Hours at the booth, first attempts only.'),
  position: z.array(position).describe('Welding positions practiced; empty when none.'),
  joint: z.array(joint).describe('Joints welded; empty when none.'),
  electrodes: z.array(electrode).describe('Electrodes burned; empty when none.'),
  introduces: z
    .strictObject({
      skills: z
        .record(z.string(), sentence)
        .describe('Skill id: a sentence that completes "the learner can".'),
      terms: z
        .record(z.string(), sentence)
        .describe('Term as the trade writes it: its definition for the glossary.'),
    })
    .describe('What is taught here for the first time.'),
  needs: idList.describe('Skills from earlier lessons that this one builds on.'),
  calculations: idList.describe('Ids of the calculations used here.'),
  exercises: idList.describe('File names of its booth exercises.'),
  hazards: z.array(z.enum(keysOf(hazards))).describe('Hazards met here for the first time.'),
  faults: z.array(fault).describe('The table of "When it goes wrong".'),
  sources: z.array(source).describe('Publications the lesson stands on.'),
});

export type Lesson = z.infer<typeof lessonSchema>;
