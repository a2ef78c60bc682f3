/** The published schemas and the site's own reading agree on which files are good. */
import Ajv from 'ajv/dist/2020.js';
import addFormats from 'ajv-formats';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { keptSchema } from '../../../content/kept-schema.ts';
import { settings } from '../../../lib/class/settings.ts';
import { readFile, writeFile } from '../../../lib/files/file-kind.ts';
import { keptFiles } from '../../../lib/published/kept-files.ts';

const day = fc.integer({ min: 1, max: 28 }).map((it) => `2026-02-${String(it).padStart(2, '0')}`);
const slug = fc.constantFrom('flat-bead', 'fillet-2f', 'groove-3g');
const text = fc.string({ maxLength: 30 });
const few = <T>(one: fc.Arbitrary<T>) => fc.array(one, { maxLength: 4 });
const key = fc.constantFrom('size', 'undercut', 'E7018 1/8 in');
const coupon = fc.record(
  {
    exercise: slug,
    on: day,
    result: fc.constantFrom('waiting', 'passed', 'repeat'),
    readings: few(fc.record({ item: text, reading: text })),
    grader: text,
    note: text,
    missed: few(text),
  },
  { requiredKeys: ['exercise', 'on', 'result', 'readings', 'grader', 'note'] },
);
const name = fc.string({ minLength: 1, maxLength: 8 });

const examples: Record<string, fc.Arbitrary<unknown>> = {
  'learner-record': fc.record({
    learner: text,
    lessonsRead: few(fc.record({ lesson: slug, on: day })),
    selfChecks: few(fc.record({ exercise: slug, ticked: few(fc.nat(9)), on: day })),
    coupons: few(coupon),
    problems: few(
      fc.record({
        calculation: slug,
        set: fc.nat(),
        place: fc.nat(),
        solved: fc.boolean(),
        on: day,
      }),
    ),
  }),
  'grading-book': fc.record({
    exercises: fc.dictionary(
      slug,
      fc.record({
        rubric: fc.record({
          passMark: fc.integer({ min: 0, max: 100 }),
          points: fc.dictionary(
            key,
            fc.record({
              weight: fc.integer({ min: 0, max: 1000 }),
              must: fc.boolean(),
              limit: text,
            }),
          ),
        }),
        coupons: few(
          fc.record({
            learner: text,
            attempt: text,
            on: text,
            grader: text,
            note: text,
            readings: fc.dictionary(key, text),
          }),
        ),
      }),
    ),
  }),
  'class-plan': fc.record({
    name: text,
    units: fc.constantFrom('us', 'metric'),
    settings: fc.record(Object.fromEntries(Object.keys(settings).map((one) => [one, text])), {
      requiredKeys: [],
    }),
    exercises: few(
      fc.record(
        {
          exercise: slug,
          attempts: text,
          learners: text,
          minutes: text,
          repeats: text,
          week: text,
        },
        { requiredKeys: ['exercise'] },
      ),
    ),
    prices: fc.dictionary(key, text),
  }),
  'class-board': fc.record({
    name: text,
    code: fc.constantFrom('AWS D1.1', 'ASME IX'),
    learners: few(
      fc.record({
        learner: name,
        at: slug,
        here: fc.boolean(),
        coupons: few(coupon),
        absences: few(fc.record({ on: day, minutes: fc.nat(600) })),
        caughtUp: fc.nat(600),
        tested: fc.oneof(day, fc.constant('')),
        lastWelded: fc.oneof(day, fc.constant('')),
      }),
    ),
    booths: few(
      fc.record({
        booth: name,
        machine: text,
        largest: fc.constantFrom(0, 0.125, 0.15625),
        down: fc.boolean(),
      }),
    ),
  }),
  'own-outline': fc.record({
    name: text,
    topics: few(fc.record({ code: text, topic: text, lessons: few(slug) })),
  }),
};

const ajv = new Ajv({ strict: true, allErrors: true, allowUnionTypes: true });
addFormats(ajv);

describe.each(keptFiles)('the schema of $kind.name', (file) => {
  const { kind } = file;
  const validate = ajv.compile(keptSchema(file));
  const example = examples[kind.name] as fc.Arbitrary<unknown>;

  it('takes every file that the site writes', () => {
    fc.assert(
      fc.property(example, (data) => {
        const written = writeFile(kind, data, '2026-03-02T10:00:00.000Z');
        expect([validate(JSON.parse(written)), validate.errors]).toEqual([true, null]);
        expect(readFile(kind, written).ok).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  it('takes and refuses the same files as the site, whatever is changed in one', () => {
    let refused = 0;
    const wrong = fc.constantFrom<unknown>(null, '', 'x', -1, 1e9, true, [], {}, undefined);
    fc.assert(
      fc.property(example, fc.nat(), wrong, (data, at, put) => {
        const written = JSON.parse(writeFile(kind, data, '2026-03-02'));
        const places = placesIn(written.data);
        const [parent, own] = places[at % places.length] ?? [written, 'data'];
        if (put === undefined && !Array.isArray(parent)) delete parent[own];
        else parent[own] = put ?? null;
        const read = readFile(kind, JSON.stringify(written));
        const good = validate(written);
        // An empty list where names are expected is read as no names; the schema is stricter there.
        if (good || !Array.isArray(put)) expect([written, good]).toEqual([written, read.ok]);
        if (!read.ok) refused++;
      }),
      { numRuns: 150 },
    );
    expect(refused).toBeGreaterThan(20);
  });

  it('takes no file of another kind or version', () => {
    const [data] = fc.sample(example, 1);
    const written = JSON.parse(writeFile(kind, data, ''));
    expect(validate({ ...written, sixteenths: 'weld' })).toBe(false);
    expect(validate({ ...written, version: kind.version + 1 })).toBe(false);
  });
});

type Place = [parent: Record<string, unknown>, key: string];

/** Every field of every object and list. */
function placesIn(value: unknown): Place[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.keys(value).flatMap((own) => [
    [value as Record<string, unknown>, own] as Place,
    ...placesIn((value as Record<string, unknown>)[own]),
  ]);
}
