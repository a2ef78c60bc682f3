import { describe, expect, it } from 'vitest';
import { lessonSchema } from '../../../content/schemas/lesson.ts';

const lesson = {
  title: 'The flat bead',
  summary: 'Run one straight bead whose slag lifts by itself.',
  unit: 'flat',
  minutes: 20,
  boothHours: 1.5,
  position: ['flat'],
  joint: ['bead'],
  electrodes: [{ classification: 'E7018', diameter: '1/8 in' }],
  introduces: {
    skills: { 'hold-arc-length': 'Hold an arc no longer than {1/8 in}' },
    terms: { 'weld pool': 'The small lake of molten metal under the arc.' },
  },
  needs: ['set-current'],
  calculations: ['heat-input'],
  exercises: ['flat-bead'],
  hazards: ['arc-rays'],
  faults: [{ see: 'A groove', sign: 'undercut', cause: 'Too fast.', change: 'Slow down.' }],
  sources: [{ source: 'aws-d1.1', at: 'Table 8.1', known: 'memory', for: 'undercut' }],
};
const accepts = (change: object) => lessonSchema.safeParse({ ...lesson, ...change }).success;

describe('the front matter of a lesson', () => {
  it('is accepted when whole', () => {
    expect(lessonSchema.safeParse(lesson).error).toBeUndefined();
  });

  it.each(Object.keys(lesson))('is refused without %s', (key) => {
    const { [key as 'title']: _, ...rest } = lesson;
    expect(lessonSchema.safeParse(rest).success).toBe(false);
  });

  it.each([
    ['a key that nobody knows', { tags: ['bead'] }],
    ['a unit that is not in the reading order', { unit: 'sideways' }],
    ['a position that is none', { position: ['upside down'] }],
    ['an electrode without its diameter', { electrodes: [{ classification: 'E7018' }] }],
    [
      'a classification that is none',
      { electrodes: [{ classification: '7018', diameter: '1/8 in' }] },
    ],
    ['a size without a unit', { electrodes: [{ classification: 'E7018', diameter: '1/8' }] }],
    ['a source that is not registered', { sources: [{ ...lesson.sources[0], source: 'hearsay' }] }],
    ['a way to know that is none', { sources: [{ ...lesson.sources[0], known: 'sure' }] }],
    ['a hazard that is not listed', { hazards: ['ghosts'] }],
    ['a fault under no sign', { faults: [{ ...lesson.faults[0], sign: 'ugly' }] }],
    ['a skill id with capitals', { needs: ['Set Current'] }],
    ['half a minute', { minutes: 0.5 }],
  ])('refuses %s', (_, change) => {
    expect(accepts(change)).toBe(false);
  });

  it('sets the apostrophes of its title', () => {
    expect(lessonSchema.parse({ ...lesson, title: "The welder's eye" }).title).toBe(
      'The welder’s eye',
    );
  });
});
