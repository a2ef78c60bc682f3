import { tableAsCsv } from '../../../lib/published/table.ts';
import { publishedTables } from '../../published.ts';

export async function getStaticPaths() {
  return (await publishedTables()).map((table) => ({
    params: { name: table.name },
    props: { table },
  }));
}

type Props = Awaited<ReturnType<typeof getStaticPaths>>[number]['props'];

export const GET = ({ props }: { props: Props }) => new Response(tableAsCsv(props.table));
