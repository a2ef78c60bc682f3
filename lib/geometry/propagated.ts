/**
 * How far results move when every number they come from may be a little off. Each number is moved
 * to both sides by its standard error; the moves are independent, so their squares add up (law of
 * propagation of uncertainty, JCGM 100:2008, clause 5.1.2, with differences for the slopes).
 */
export type Results = Readonly<Record<string, number | undefined>>;

/** Standard uncertainties of the results of `read` at `values`; a result that comes and goes has none. */
export function propagated(
  read: (values: readonly number[]) => Results | undefined,
  values: readonly number[],
  errors: readonly number[],
): Record<string, number> {
  const squares: Record<string, number> = {};
  for (const [i, error] of errors.entries()) {
    if (error === 0) continue;
    const moved = (by: number) => read(values.with(i, (values[i] as number) + by));
    const [ahead, behind] = [moved(error), moved(-error)];
    if (!ahead || !behind) continue;
    for (const [name, value] of Object.entries(ahead)) {
      const half = ((value ?? Number.NaN) - (behind[name] ?? Number.NaN)) / 2;
      if (!Number.isNaN(half)) squares[name] = (squares[name] ?? 0) + half ** 2;
    }
  }
  return Object.fromEntries(
    Object.entries(squares).map(([name, square]) => [name, Math.sqrt(square)]),
  );
}
