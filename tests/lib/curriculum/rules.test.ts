/** Each rule is broken once by a small course, and the real course is held to all of them. */
import { describe, expect, it } from 'vitest';
import { readCurriculum } from '../../../content/read-curriculum.ts';
import type { Curriculum } from '../../../lib/curriculum/curriculum.ts';
import { audit, rules } from '../../../lib/curriculum/rules.ts';
import {
  bead,
  gate,
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

/** What a rule says of a place that is right, or wrong, in a course made for it. */
const found = (course: Curriculum, id: string) =>
  audit(course).find(({ rule }) => rule.id === id)?.findings ?? [];
const says = (course: Curriculum, id: string, holds: boolean) =>
  found(course, id)
    .filter((one) => one.holds === holds)
    .map((one) => one.says);

describe('a rule', () => {
  it('of the order tells a place that is taken twice, and every fault of it', () => {
    const twice = { ...sound, units: [{ ...all, lessons: [...all.lessons, 'bead'] }] };
    expect(says(twice, 'reachable-in-order', false)).toEqual([
      'all has bead, twice in the order',
      'all has bead, twice in the order',
    ]);
    expect(says(sound, 'reachable-in-order', true)).toEqual([
      'all has gate',
      'all has bead',
      'all has groove',
    ]);
  });

  it('of the gate looks for hazards of the arc up to the lesson of the first arc', () => {
    const hazards = ['arc-rays', 'fume', 'shock', 'burns'];
    const late = withChanges([
      { ...gateLesson, hazards },
      { ...groove, hazards: ['fire'] },
    ]);
    expect(says(late, 'safety-gate-first', false)).toContain('fire is named in groove');
    const inTime = withChanges([
      { ...gateLesson, hazards },
      { ...bead, hazards: ['fire'] },
    ]);
    expect(says(inTime, 'safety-gate-first', true)).toContain('fire is named in bead');
    // Skills of that lesson too are to be shown before the arc.
    expect(says(inTime, 'safety-gate-first', false)).toEqual([
      'do-bead of bead is not assessed before try-bead',
    ]);
    const never = withChanges([{ ...gateLesson, hazards }]);
    const [fire] = found(never, 'safety-gate-first').filter(({ holds }) => !holds);
    expect(fire).toEqual({
      holds: false,
      says: 'fire is named nowhere',
      at: { page: 'lesson', id: 'gate' },
    });
    const nothing = { ...sound, lessons: [], exercises: [] };
    expect(found(nothing, 'safety-gate-first').map(({ at }) => at.id)).toEqual(Array(5).fill(''));
  });

  it('of the gate holds a course without an arc to its skills all the same', () => {
    const cold = {
      ...sound,
      exercises: sound.exercises.map((one) => ({ ...one, electrodes: [] })),
    };
    expect(says(cold, 'safety-gate-first', true)).toEqual([
      ...['arc-rays', 'fume', 'shock', 'burns', 'fire'].map((one) => `${one} is named in gate`),
      'do-gate is assessed by try-gate before any arc',
    ]);
    const open = { ...cold, exercises: cold.exercises.slice(1) };
    expect(says(open, 'safety-gate-first', false)).toEqual([
      'do-gate of gate is not assessed before any arc',
    ]);
    const alone = { ...cold, exercises: cold.exercises.slice(0, 1) };
    expect(says(alone, 'safety-gate-first', false)).toEqual([]);
    // An arc in the very first exercise comes before any gate.
    const hot = { ...sound, exercises: [{ ...gate, electrodes: tryBead.electrodes }] };
    expect(says(hot, 'safety-gate-first', false)).toEqual([
      'do-gate of gate is not assessed before try-gate',
    ]);
  });

  it('of hazards takes a hazard named in the same lesson, and points to the step', () => {
    const same = withChanges(
      [{ ...bead, hazards: ['cutting'] }],
      [{ ...tryBead, steps: ['Look.', 'Saw a slice.'] }],
    );
    expect(found(same, 'hazards-precede-exposure').at(5)).toEqual({
      holds: true,
      says: 'try-bead of bead meets cutting, named in bead',
      at: { page: 'exercise', id: 'try-bead', part: 'steps', sentence: 'Saw a slice.' },
    });
    expect(found(same, 'hazards-precede-exposure')[0]?.at).toEqual({
      page: 'exercise',
      id: 'try-bead',
    });
    const later = withChanges(
      [{ ...groove, hazards: ['cutting'] }],
      [{ ...tryBead, steps: ['Saw a slice.'] }],
    );
    expect(says(later, 'hazards-precede-exposure', false)).toEqual([
      'try-bead of bead meets cutting, named in groove',
    ]);
  });

  it('of needs wants them from an earlier lesson, not from the same one or from none', () => {
    const course = withChanges([{ ...bead, needs: ['do-bead', 'fly', 'do-gate'] }]);
    expect(says(course, 'needs-come-first', false)).toEqual([
      'bead needs do-bead, introduced in bead',
      'bead needs fly, introduced nowhere',
    ]);
    const [right, wrong] = [true, false].map((holds) =>
      found(course, 'needs-come-first').find((one) => one.holds === holds),
    );
    expect(right?.at).toEqual({
      page: 'lesson',
      id: 'bead',
      part: 'needs-first',
      sentence: 'Do gate',
    });
    expect(wrong?.at).toEqual({ page: 'lesson', id: 'bead', part: 'needs-first' });
  });

  it('of later skills takes those of its own lesson, and tells one that is introduced nowhere', () => {
    const course = withChanges([], [{ ...tryBead, practises: ['fly'], assesses: ['do-bead'] }]);
    const [, fly, own] = found(course, 'no-later-skill');
    expect(fly).toEqual({
      holds: false,
      says: 'try-bead of bead asks for fly, introduced nowhere',
      at: { page: 'exercise', id: 'try-bead', part: 'practices', sentence: undefined },
    });
    expect(own).toMatchObject({
      holds: true,
      at: { part: 'assesses', sentence: 'Do bead' },
    });
  });

  it('of practice looks from the lesson on, and points to the exercise or to the lesson', () => {
    const early = withChanges(
      [],
      [
        { ...tryBead, practises: [], assesses: ['do-bead', 'do-groove'] },
        { ...tryGroove, practises: [], assesses: [] },
      ],
    );
    expect(says(early, 'practised-and-assessed', false)).toEqual([
      'do-bead of bead is not practiced',
      'do-groove of groove is not practiced',
      'do-groove of groove is not assessed',
    ]);
    const [practice] = found(sound, 'practised-and-assessed');
    expect(practice).toEqual({
      holds: true,
      says: 'do-gate of gate is practiced by try-gate',
      at: { page: 'exercise', id: 'try-gate', part: 'practices', sentence: 'Do gate' },
    });
  });

  it('of one step counts what is new by name, and skips what is not welded', () => {
    const rod = (diameter: string) => [{ classification: 'E7018', diameter }];
    const newOf = (change: Partial<typeof tryGroove>) =>
      found(withChanges([], [{ ...tryGroove, ...change }]), 'one-step-at-a-time');
    expect(newOf({})).toEqual([
      {
        holds: true,
        says: 'try-groove: new is joint',
        at: { page: 'exercise', id: 'try-groove' },
      },
    ]);
    expect(newOf({ joint: ['bead'] })[0]?.says).toBe('try-groove: new is none of them');
    expect(newOf({ electrodes: rod('5/32 in') })[0]).toMatchObject({
      holds: true,
      says: 'try-groove: new are joint, electrode diameter',
    });
    // Known beside new is known.
    expect(newOf({ joint: ['bead', 'groove'], pipes: ['6'] })[0]?.says).toBe(
      'try-groove: new is pipe size',
    );
    expect(newOf({ electrodes: [] })).toEqual([]);
    expect(newOf({ position: [] })).toEqual([]);
    expect(newOf({ joint: [] })).toEqual([]);
  });

  it('of tests takes a groove or a pipe that is judged, welded and in a position, and nothing else', () => {
    const tested = (change: Partial<typeof tryGroove>) =>
      found(withChanges([], [{ ...tryGroove, ...change }]), 'trained-before-tested').map(
        (one) => one.says,
      );
    expect(tested({})).toEqual(['try-groove tests flat, trained earlier']);
    expect(tested({ joint: ['groove', 'pipe groove'] })).toHaveLength(1);
    expect(tested({ joint: ['groove', 'tee'] })).toEqual([]);
    expect(tested({ joint: [] })).toEqual([]);
    expect(tested({ assesses: [] })).toEqual([]);
    expect(tested({ electrodes: [] })).toEqual([]);
    expect(tested({ position: [] })).toEqual([]);
    // Round a fixed pipe: ASME IX, QW-461.4 (from memory).
    expect(tested({ position: ['pipe 2G'] })).toEqual([
      'try-groove tests horizontal, not trained before',
    ]);
    expect(tested({ position: ['pipe 5G'] })).toEqual([
      'try-groove tests overhead, not trained before',
      'try-groove tests vertical, not trained before',
      'try-groove tests flat, trained earlier',
    ]);
    expect(tested({ position: ['pipe 6G'] })).toHaveLength(6);
  });

  it('of training counts what was practiced in a position, not what was only shown there', () => {
    const shown = withChanges([], [{ ...tryBead, practises: [] }]);
    expect(says(shown, 'trained-before-tested', false)).toEqual([
      'try-groove tests flat, not trained before',
    ]);
  });

  it('of spacing counts booth hours since a skill of another lesson began: three are enough', () => {
    expect(found(sound, 'spaced-before-test')).toEqual([
      {
        holds: true,
        says: 'try-groove asks for do-bead of bead, 3 booth hours after it began',
        at: {
          page: 'exercise',
          id: 'try-groove',
          part: 'practices',
          sentence: 'Do bead',
        },
      },
    ]);
    const short = withChanges([], [{ ...tryBead, minutes: 59 }]);
    expect(says(short, 'spaced-before-test', false)).toHaveLength(1);
    const side = withChanges([], [{ ...tryBead, station: 'side' }]);
    expect(says(side, 'spaced-before-test', false)).toEqual([
      'try-groove asks for do-bead of bead, 0 booth hours after it began',
    ]);
    // Of a lesson without exercises, or introduced nowhere, nothing can be counted.
    const odd = withChanges([], [{ ...tryGroove, practises: ['fly', 'do-groove'] }]);
    expect(found(odd, 'spaced-before-test')).toEqual([]);
    const bare = { ...sound, exercises: [tryGroove] };
    expect(found(bare, 'spaced-before-test')).toEqual([]);
    expect(found({ ...sound, exercises: [tryBead] }, 'spaced-before-test')).toEqual([]);
  });

  it('of hours lets a quarter of an hour pass, at the booth alone', () => {
    const of = (boothHours: number, change: Partial<typeof tryBead> = {}) =>
      found(withChanges([{ ...bead, boothHours }], [{ ...tryBead, ...change }]), 'hours-add-up')[1];
    expect([of(3.25), of(2.75)].map((one) => one?.holds)).toEqual([true, true]);
    expect([of(3.26), of(2.74)].map((one) => one?.holds)).toEqual([false, false]);
    expect(of(0, { station: 'side' })).toMatchObject({
      holds: true,
      says: 'bead: 0 h stated, 0 h from its exercises',
    });
    expect(of(1, { minutes: 20.2 })?.says).toBe('bead: 1 h stated, 1.01 h from its exercises');
    const ghost = withChanges([{ ...bead, exercises: ['try-bead', 'ghost'] }]);
    expect(found(ghost, 'hours-add-up')[1]?.holds).toBe(true);
  });

  it('of acceptance counts points and sources of the exercises that a lesson names', () => {
    const bare = withChanges([], [{ ...tryBead, grading: [] }]);
    expect(says(bare, 'exercise-with-acceptance', false)).toEqual([
      'try-bead is judged by 0 points',
      'bead has 0 acceptance points that name a source',
    ]);
    const ghost = withChanges([{ ...bead, exercises: ['ghost'] }]);
    expect(says(ghost, 'exercise-with-acceptance', false)).toEqual([
      'bead has 0 acceptance points that name a source',
    ]);
    expect(says(sound, 'exercise-with-acceptance', true)[0]).toBe('try-gate is judged by 1 points');
  });

  it('of lists tells a calculation that stands in the list only', () => {
    const course = withChanges([{ ...bead, calculations: ['travel-speed', 'heat-input'] }]);
    expect(says(course, 'calculations-as-listed', false)).toEqual([
      'bead has heat-input in its list only',
    ]);
  });

  it('of checks counts those of the calculation itself', () => {
    const calculations = ['travel-speed', 'heat-input'].map((id) => ({
      id,
      title: id,
      forTeaching: false,
      sources: [],
    }));
    const checks = [check, check];
    expect(found({ ...sound, calculations, checks }, 'numbers-are-checked')).toMatchObject([
      { holds: true, says: 'travel-speed: 2 values' },
      { holds: false, says: 'heat-input: 0 values' },
    ]);
    expect(says(sound, 'numbers-are-checked', true)).toEqual(['travel-speed: 1 value']);
    const named = withChanges([{ ...bead, calculations: ['unheard-of'] }]);
    expect(says(named, 'numbers-are-checked', false)).toEqual(['unheard-of: 0 values']);
  });

  it('of orphans wants an exercise in the lesson that it names, by both', () => {
    const moved = withChanges([], [{ ...tryBead, lesson: 'groove' }]);
    expect(says(moved, 'no-orphan-exercise', false)).toEqual([
      'try-bead belongs to groove',
      'bead names try-bead',
    ]);
    const ghost = withChanges([{ ...bead, exercises: ['try-bead', 'ghost'] }]);
    expect(says(ghost, 'no-orphan-exercise', false)).toEqual(['bead names ghost']);
  });

  it('of orphans takes a calculation that is listed, linked or for teaching, and tells one that does not exist', () => {
    const one = (id: string, forTeaching = false) => ({ id, title: id, forTeaching, sources: [] });
    const course = {
      ...withChanges([
        {
          ...bead,
          calculations: ['travel-speed', 'ghost'],
          inText: { ...bead.inText, calculators: ['linked'] },
        },
      ]),
      calculations: [one('travel-speed'), one('linked'), one('plan', true), one('lonely')],
    };
    expect(says(course, 'no-orphan-calculation', true)).toEqual([
      'travel-speed is used in gate',
      'linked is used in bead',
      'plan is used to run a class',
    ]);
    expect(says(course, 'no-orphan-calculation', false)).toEqual([
      'lonely is used nowhere',
      'bead names ghost, which does not exist',
    ]);
  });

  it('of sources counts every kind of place that cites', () => {
    const cited = (change: Partial<Curriculum>) =>
      says({ ...sound, exercises: [], checks: [], ...change }, 'no-orphan-source', true);
    expect(cited({})).toEqual([]);
    expect(cited({ outlines: [{ id: 'o', source: 'book' }] })).toEqual(['book is cited once']);
    expect(cited({ checks: [check, check] })).toEqual(['book is cited 2 times']);
    const sources = [{ source: 'book', at: '', known: 'read' as const, for: 'x' }];
    expect(cited({ lessons: [{ ...bead, sources }] })).toEqual(['book is cited once']);
    expect(cited({ calculations: [{ id: 'a', title: 'A', forTeaching: false, sources }] })).toEqual(
      ['book is cited once'],
    );
    const strange = (change: Partial<Curriculum>) =>
      says(
        { ...sound, sources: [], exercises: [], checks: [], ...change },
        'no-orphan-source',
        false,
      );
    expect(strange({ outlines: [{ id: 'o', source: 'book' }] })).toEqual([
      'o cites book, which is not listed',
    ]);
    expect(strange({ lessons: [{ ...bead, sources }] })).toEqual([
      'bead cites book, which is not listed',
    ]);
    expect(
      strange({ calculations: [{ id: 'a', title: 'A', forTeaching: false, sources }] }),
    ).toEqual(['a cites book, which is not listed']);
    const point = { item: 'looks', limit: 'Good', known: 'practice' as const };
    expect(strange({ exercises: [{ ...tryBead, grading: [point] }] })).toEqual([]);
  });

  it('of terms tells one that is defined twice', () => {
    const twice = withChanges([{ ...bead, terms: { arc: 'Again' } }]);
    expect(says(twice, 'no-orphan-term', false)).toEqual([
      'arc, defined in bead and in gate, first linked in gate',
    ]);
    expect(says(sound, 'no-orphan-term', true)).toEqual([
      'arc, defined in gate, first linked in gate',
    ]);
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
