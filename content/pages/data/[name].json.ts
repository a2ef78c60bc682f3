import { publishedFiles } from '../../published.ts';

export async function getStaticPaths() {
  return Object.entries(await publishedFiles()).map(([name, file]) => ({
    params: { name },
    props: { file },
  }));
}

export const GET = ({ props }: { props: { file: unknown } }) =>
  new Response(`${JSON.stringify(props.file, null, 1)}\n`);
