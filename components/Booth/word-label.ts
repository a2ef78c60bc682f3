import { type BoothWordInLink, boothQuantity, isOfRoot } from '../../lib/booth/booth-quantities.ts';

/** What a number of the booth is called; with an electrode of its own for the root, whose it is. */
export const wordLabel = (word: BoothWordInLink, rooted: boolean): string =>
  boothQuantity(word).label +
  (rooted && !isOfRoot(word) && /^(class|electrode|current)$/.test(word) ? ', fill and cover' : '');
