import { ofBoth } from './DrawnBoth.tsx';

/**
 * A calculation's drawing for its live form. In a file of its own, which holds the list of all
 * drawings: most forms have none and need not carry the list.
 */
export async function liveDrawing(name: string): Promise<ReturnType<typeof ofBoth>> {
  const { default: Drawing } = await import(`../drawings/${name}.tsx`);
  return ofBoth(Drawing);
}
