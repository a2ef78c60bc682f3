/** Each rule is broken once by a small course, and the real course is held to all of them. */
import { describe, expect, it } from 'vitest';
import { readCurriculum } from '../../../content/read-curriculum.ts';
import type { Curriculum } from '../../../lib/curriculum/curriculum.ts';
import { audit, rules } from '../../../lib/curriculum/rules.ts';
import {
  bead,
  gateLesson,
  groove,
  lesson,
  sound,
  tryBead,
  tryGroove,
  withChanges,
} from './sound-course.ts';

const [all] = sound.units as [Curriculum['units'][number]];
const [check] = sound.checks as [Curriculum['checks'][number]];

const brokenBy = (course: Curriculum) =>
  audit(course)
    .filter(({ broken }) => broken.length > 0)
    .map(({ rule }) => rule.id);
const places = (course: Curriculum, id: string) =>
  audit(course).flatMap(({ rule, broken }) =>
    rule.id === id ? broken.map(({ says }) => says) : [],
  );

it('finds nothing in a sound course', () => {
  expect(brokenBy(sound)).toEqual([]);
});

/** Rule, what is wrong, the course, and the place that must be named. */
const faults: readonly [string, string, Curriculum, RegExp][] = [
  [
    'reachable-in-order',
    'a place whose lesson is not written',
    { ...sound, units: [...sound.units, { id: 'more', title: 'More', lessons: ['ghost'] }] },
    /ghost, which is not written/,
  ],
  [
    'reachable-in-order',
    'a lesson that has no place',
    { ...sound, unplaced: ['stray'] },
    /stray has no place/,
  ],
  [
    'reachable-in-order',
    'a lesson that names another unit',
    withChanges([{ ...bead, unit: 'pipe' }]),
    /bead, which says pipe/,
  ],
  [
    'safety-gate-first',
    'a gate that does not assess the skills of safety',
    withChanges(
      [
        { ...bead, needs: ['do-gate', 'shut-curtain'] },
        { ...gateLesson, skills: { 'do-gate': 'Do', 'shut-curtain': 'Shut it' } },
      ],
      [
        {
          ...tryBead,
          practises: ['do-bead', 'shut-curtain'],
          assesses: ['do-bead', 'shut-curtain'],
        },
      ],
    ),
    /shut-curtain of gate is not assessed before try-bead/,
  ],
  [
    'hazards-precede-exposure',
    'a step with a saw before sawing is named',
    withChanges([], [{ ...tryBead, steps: ['Saw a slice.'] }]),
    /try-bead of bead meets cutting, named nowhere/,
  ],
  [
    'needs-come-first',
    'a need that comes later',
    withChanges([{ ...bead, needs: ['do-groove'] }]),
    /bead needs do-groove, introduced in groove/,
  ],
  [
    'introduced-once',
    'a skill introduced twice',
    withChanges([{ ...groove, skills: { 'do-groove': 'Do it', 'do-bead': 'Again' } }]),
    /groove introduces do-bead, as bead does/,
  ],
  [
    'practised-and-assessed',
    'a skill that no exercise assesses',
    withChanges(
      [{ ...bead, skills: { 'do-bead': 'Do it', listen: 'Listen' } }],
      [{ ...tryBead, practises: ['do-bead', 'listen'] }],
    ),
    /listen of bead is not assessed/,
  ],
  [
    'practised-and-assessed',
    'a skill that only an earlier exercise practices',
    withChanges(
      [{ ...groove, skills: { 'do-groove': 'Do it', listen: 'Listen' } }],
      [{ ...tryGroove, assesses: ['do-groove', 'listen'] }],
    ),
    /listen of groove is not practiced/,
  ],
  [
    'no-later-skill',
    'an exercise that assesses what comes later',
    withChanges([], [{ ...tryBead, assesses: ['do-bead', 'do-groove'] }]),
    /try-bead of bead asks for do-groove/,
  ],
  [
    'one-step-at-a-time',
    'position and joint new at once',
    withChanges([], [{ ...tryBead }, { ...tryGroove, position: ['horizontal'], joint: ['tee'] }]),
    /try-groove: new are position, joint/,
  ],
  [
    'one-step-at-a-time',
    'joint, electrode and pipe new at once',
    withChanges(
      [],
      [
        {
          ...tryGroove,
          joint: ['tee'],
          pipes: ['2'],
          electrodes: [{ classification: 'E7018', diameter: '3/32 in' }],
        },
      ],
    ),
    /try-groove: new are joint, electrode diameter, pipe size/,
  ],
  [
    'trained-before-tested',
    'a groove in a position that was never practiced',
    withChanges(
      [],
      [
        { ...tryBead, joint: ['bead', 'groove'] },
        { ...tryGroove, position: ['vertical'] },
      ],
    ),
    /try-groove tests vertical, not trained before/,
  ],
  [
    'spaced-before-test',
    'a test on the evening after its skill began',
    withChanges([{ ...bead, boothHours: 1 }], [{ ...tryBead, attempts: 1 }]),
    /try-groove asks for do-bead of bead, 1 booth hours/,
  ],
  [
    'exercise-with-acceptance',
    'a lesson without an exercise',
    {
      ...sound,
      units: [{ ...all, lessons: [...all.lessons, 'talk'] }],
      lessons: [...sound.lessons, lesson('talk', { skills: {}, exercises: [], boothHours: 0 })],
    },
    /talk has no exercise/,
  ],
  [
    'exercise-with-acceptance',
    'acceptance that names no source',
    withChanges(
      [],
      [{ ...tryBead, grading: [{ item: 'looks', limit: 'Good', known: 'practice' }] }],
    ),
    /bead has 0 acceptance points that name a source/,
  ],
  [
    'hours-add-up',
    'stated hours that the exercises do not fill',
    withChanges([], [{ ...tryBead, attempts: 4 }]),
    /bead: 3 h stated, 4 h from its exercises/,
  ],
  [
    'numbers-are-checked',
    'a calculation that nothing checks',
    { ...sound, checks: [] },
    /travel-speed: 0 values/,
  ],
  [
    'calculations-as-listed',
    'a calculation in the text that the list leaves out',
    withChanges([
      { ...bead, inText: { ...bead.inText, calculations: ['travel-speed', 'heat-input'] } },
    ]),
    /bead has heat-input, which it does not list/,
  ],
  [
    'no-orphan-exercise',
    'an exercise that its lesson does not name',
    { ...sound, exercises: [...sound.exercises, { ...tryBead, slug: 'extra' }] },
    /extra belongs to bead/,
  ],
  [
    'no-orphan-calculation',
    'a calculation that no lesson uses',
    {
      ...sound,
      calculations: [
        ...sound.calculations,
        { id: 'lonely', title: 'Lonely', forTeaching: false, sources: [] },
      ],
      checks: [...sound.checks, { calculation: 'lonely', source: 'book', known: 'read' }],
    },
    /lonely is used nowhere/,
  ],
  [
    'no-orphan-source',
    'a source that nobody cites',
    { ...sound, sources: ['book', 'dust'] },
    /dust is cited 0 times/,
  ],
  [
    'no-orphan-source',
    'a citation of a source that is not listed',
    { ...sound, checks: [...sound.checks, { ...check, source: 'rumor' }] },
    /travel-speed cites rumor, which is not listed/,
  ],
  [
    'no-orphan-term',
    'a term that no lesson links',
    withChanges([{ ...bead, terms: { pool: 'A lake' } }]),
    /pool, defined in bead, linked nowhere/,
  ],
  [
    'no-orphan-term',
    'a term that is used before it is defined',
    withChanges([
      { ...gateLesson, inText: { ...gateLesson.inText, terms: ['arc', 'pool'] } },
      { ...bead, terms: { pool: 'A lake' } },
    ]),
    /pool, defined in bead, first linked in gate/,
  ],
];

describe.each(faults)('%s', (id, what, course, place) => {
  it(`names the place of ${what}, and no other rule is broken by it`, () => {
    expect(brokenBy(course)).toEqual([id]);
    expect(places(course, id)).toEqual([expect.stringMatching(place)]);
  });
});

it('has a fault for every rule', () => {
  expect(new Set(faults.map(([id]) => id))).toEqual(new Set(rules.map(({ id }) => id)));
});

const real = audit(await readCurriculum());

it.each(real)('the course keeps to: $rule.sentence', ({ broken }) => {
  expect(broken.map(({ says }) => says)).toEqual([]);
});

it.each(real)('something was looked at for: $rule.sentence', ({ findings }) => {
  expect(findings.length).toBeGreaterThan(5);
});
