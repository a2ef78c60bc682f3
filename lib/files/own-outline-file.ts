/** A reviewer's own outline as the browser keeps it. */
import * as v from 'valibot';
import type { FileKind } from './file-kind.ts';

const text = v.pipe(v.string(), v.maxLength(4000));

const outline = v.object({
  /** The name of the table it came from. */
  name: text,
  topics: v.pipe(
    v.array(v.object({ code: text, topic: text, lessons: v.array(text) })),
    v.maxLength(500),
  ),
});

export type OwnOutline = v.InferOutput<typeof outline>;

export const ownOutlineFile: FileKind<OwnOutline> = {
  name: 'own-outline',
  title: 'an outline',
  version: 1,
  schema: outline,
};

/** An outline without topics. */
export const emptyOutline = (): OwnOutline => ({ name: '', topics: [] });
