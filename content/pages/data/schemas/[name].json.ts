import { keptFiles } from '../../../../lib/published/kept-files.ts';
import { schemas } from '../../../../lib/published/schemas.ts';
import { keptSchema } from '../../../kept-schema.ts';

const kept = keptFiles.map((file) => [file.kind.name, keptSchema(file)] as const);

export const getStaticPaths = () =>
  [...Object.entries(schemas), ...kept].map(([name, schema]) => ({
    params: { name },
    props: { schema },
  }));

export const GET = ({ props }: { props: { schema: object } }) =>
  new Response(`${JSON.stringify(props.schema, null, 1)}\n`);
