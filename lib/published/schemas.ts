/** JSON Schemas of the published files, by file name. Closed: what is not named is not there. */
const draft = 'https://json-schema.org/draft/2020-12/schema';

const text = { type: 'string', minLength: 1 } as const;
const id = { type: 'string', pattern: '^[a-z0-9.]+(-[a-z0-9.]+)*$' } as const;
const ids = { type: 'array', items: id } as const;
const texts = { type: 'array', items: text } as const;
const count = { type: 'integer', minimum: 0 } as const;
const known = { enum: ['read', 'memory', 'practice', 'derived'] } as const;

/** An object with just these fields, all of them but the optional ones. */
const record = (properties: object, optional: readonly string[] = []) => ({
  type: 'object',
  properties,
  required: Object.keys(properties).filter((name) => !optional.includes(name)),
  additionalProperties: false,
});
const list = (items: object) => ({ type: 'array', items });

const electrode = record({ classification: text, diameter: text });
const citation = record({ source: id, at: { type: 'string' }, known, for: text });

const curriculum = {
  $schema: draft,
  title: 'The course: units, lessons, exercises and the verdict of the audit',
  ...record({
    version: { const: 1 },
    course: record({ name: text, edition: text, language: text, license: text }),
    units: list(record({ id, title: text, lessons: ids })),
    lessons: list(
      record({
        id,
        number: { type: 'integer', minimum: 1 },
        title: text,
        unit: id,
        readingMinutes: count,
        boothHours: { type: 'number', minimum: 0 },
        positions: texts,
        joints: texts,
        electrodes: list(electrode),
        skills: list(record({ id, learnerCan: text })),
        terms: list(record({ term: text, definition: text })),
        needs: ids,
        calculations: ids,
        exercises: ids,
        hazards: ids,
        sources: list(citation),
      }),
    ),
    exercises: list(
      record({
        id,
        title: text,
        lesson: id,
        station: { enum: ['booth', 'side'] },
        positions: texts,
        joints: texts,
        electrodes: list(electrode),
        minutes: { type: 'integer', minimum: 1 },
        attempts: { type: 'integer', minimum: 1 },
        practices: ids,
        assesses: ids,
        acceptance: list(
          record({ item: text, limit: text, source: id, at: text, known }, ['source', 'at']),
        ),
      }),
    ),
    rules: list(record({ id, sentence: text, lookedAt: count, broken: texts })),
  }),
};

/** An input or output; its further fields depend on its kind. */
const labeled = { type: 'object', properties: { label: text }, required: ['label'] } as const;

const calculations = {
  $schema: draft,
  title: 'The calculations: inputs with limits, outputs, sources',
  ...record({
    version: { const: 1 },
    calculations: list({
      type: 'object',
      properties: {
        id,
        kind: { enum: ['formula', 'procedure'] },
        title: text,
        summary: text,
        inputs: { type: 'object', additionalProperties: labeled },
        outputs: { type: 'object', additionalProperties: labeled },
        constants: { type: 'object' },
        beware: texts,
        sources: list({
          type: 'object',
          properties: { source: id, at: { type: 'string' }, known },
          required: ['source', 'known'],
        }),
      },
      required: ['id', 'kind', 'title', 'summary', 'inputs', 'outputs', 'beware', 'sources'],
      additionalProperties: false,
    }),
  }),
};

const sources = {
  $schema: draft,
  title: 'The publications, as CSL-JSON items',
  ...list(
    record(
      {
        id,
        type: {
          enum: [
            'standard',
            'legislation',
            'report',
            'book',
            'article-journal',
            'webpage',
            'document',
          ],
        },
        title: text,
        publisher: text,
        edition: text,
        note: text,
      },
      ['edition'],
    ),
  ),
};

const tables = {
  $schema: draft,
  title: 'The columns of the tables',
  ...record({
    version: { const: 1 },
    tables: list(
      record({
        file: text,
        holds: text,
        rows: count,
        columns: list(record({ name: text, holds: text })),
      }),
    ),
  }),
};

export const schemas = { curriculum, calculations, sources, tables } as const;
