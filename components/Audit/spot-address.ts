import type { Spot } from '../../lib/curriculum/rule.ts';
import { to } from '../Page/to.ts';
import { withApostrophes } from '../Sentence/with-apostrophes.ts';
import { sourceAnchor } from '../SourceList/source-anchor.ts';
import { termId } from '../Term/term-id.ts';

/**
 * Where a reader finds what a rule speaks of. The part of the page is named by its id, the sentence
 * in it by its first words, which browsers look up and mark; those that cannot stop at the part.
 */
export function spotAddress({ page, id, part, sentence }: Spot): string {
  if (page === 'source') return to(`/sources/#${sourceAnchor(id)}`);
  if (page === 'term') return to(`/glossary/#${termId(id)}`);
  if (page === 'calculation') return to(`/audit/checks/${id}/`);
  const address = to(page === 'lesson' ? `/lessons/${id}/` : `/exercises/${id}/`);
  return (
    address + (part || sentence ? `#${part ?? ''}${sentence ? firstWords(sentence) : ''}` : '')
  );
}

/** A text directive: the words up to the first quantity, whose shape depends on the reader's units. */
function firstWords(sentence: string): string {
  const [plain = ''] = withApostrophes(sentence).split('{');
  const words = plain.trim().split(/\s+/).slice(0, 7);
  if (words.length < 2) return '';
  const text = encodeURIComponent(words.join(' ')).replace(/-/g, '%2D');
  return `:~:text=${text}`;
}
