/** The publications as CSL-JSON, which reference managers read. */
import { type SourceId, sourceOf, sources } from '../sources.ts';

/** An item for each publication, in the order of `sources.ts`. */
export const sourcesFile = () =>
  (Object.keys(sources) as SourceId[]).map((id) => {
    const { title, publisher, edition, type, is } = sourceOf(id);
    return { id, type, title, publisher, ...(edition && { edition }), note: is };
  });
