import { schemas } from '../../../../lib/published/schemas.ts';

export const getStaticPaths = () =>
  Object.entries(schemas).map(([name, schema]) => ({ params: { name }, props: { schema } }));

export const GET = ({ props }: { props: { schema: object } }) =>
  new Response(`${JSON.stringify(props.schema, null, 1)}\n`);
