/**
 * Thrown by `compute` where the values are readable but the question has no answer: no row in the
 * table, a plate narrower than a bead. The text goes on after the field's label or stands alone.
 */
export class NoAnswer extends Error {
  readonly field: string | undefined;
  constructor(text: string, field?: string) {
    super(text);
    this.field = field;
  }
}
