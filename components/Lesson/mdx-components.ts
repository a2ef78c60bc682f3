import Acceptance from '../Acceptance/Acceptance.astro';
import Caution from '../Caution/Caution.astro';
import Drawing from '../Drawing/Drawing.astro';
import Exercise from '../Exercise/Exercise.astro';
import Faults from '../Faults/Faults.astro';
import Link from '../Page/Link.astro';
import Picture from '../Page/Picture.astro';
import Table from '../Page/Table.astro';
import Term from '../Term/Term.astro';
import TemporaryAmount from './TemporaryAmount.astro';
import TemporaryBlock from './TemporaryBlock.astro';

/** Everything a lesson may use without importing it. */
export const mdxComponents = {
  a: Link,
  img: Picture,
  table: Table,
  Acceptance,
  Caution,
  Drawing,
  Exercise,
  Faults,
  Term,
  Amount: TemporaryAmount,
  Answer: TemporaryBlock,
  Calculator: TemporaryBlock,
  Cite: TemporaryBlock,
  Practice: TemporaryBlock,
  WorkedExample: TemporaryBlock,
};
