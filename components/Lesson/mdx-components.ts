import Acceptance from '../Acceptance/Acceptance.astro';
import Amount from '../Amount/Amount.astro';
import Answer from '../Answer/Answer.astro';
import Calculator from '../Calculator/Calculator.astro';
import Caution from '../Caution/Caution.astro';
import Cite from '../Cite/Cite.astro';
import Drawing from '../Drawing/Drawing.astro';
import Exercise from '../Exercise/Exercise.astro';
import Faults from '../Faults/Faults.astro';
import Link from '../Page/Link.astro';
import Picture from '../Page/Picture.astro';
import Table from '../Page/Table.astro';
import Practice from '../Practice/Practice.astro';
import Term from '../Term/Term.astro';
import WorkedExample from '../WorkedExample/WorkedExample.astro';

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
  Amount,
  Answer,
  Calculator,
  Cite,
  Practice,
  WorkedExample,
};
