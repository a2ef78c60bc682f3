/** The JSON Schema of a file that readers keep, from the shape that the site itself reads by. */
import { toJsonSchema } from '@valibot/to-json-schema';
import type { KeptFile } from '../lib/published/kept-files.ts';

/** Fields that it does not name may be there: the site passes over them. */
export function keptSchema({ kind: { name, title, version, schema } }: KeptFile): object {
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: `${title.charAt(0).toUpperCase()}${title.slice(1)}, as a file`,
    type: 'object',
    properties: {
      sixteenths: { const: name },
      version: { const: version },
      saved: { type: 'string', description: 'Day or moment of saving, in ISO 8601.' },
      data: toJsonSchema(schema, { target: 'draft-2020-12' }),
    },
    required: ['sixteenths', 'version', 'data'],
  };
}
