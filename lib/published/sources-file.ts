/** The publications as CSL-JSON, which reference managers read. */
import { type SourceId, sourceOf, sources } from '../sources.ts';

export const sourcesFile = () =>
  (Object.keys(sources) as SourceId[]).map((id) => {
    const { title, publisher, edition, type, is } = sourceOf(id);
    return { id, type, title, publisher, ...(edition && { edition }), note: is };
  });
