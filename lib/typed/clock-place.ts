/** A place round a pipe by the hour, as its angle: `4:00`, `4 o’clock` and `4:30` are 120° and 135°. */

const byTheHour = /^(\d\d?)(?::([0-5]\d))?(?:\s*o['’]?\s?clock)?$/i;

/** The angle from the top in degrees, or the text as it was typed: a bare number is an angle already. */
export function angleByTheHour(typed: string): string {
  const text = typed.trim();
  const [, hour, minutes] = byTheHour.exec(text) ?? [];
  const bare = /^\d+$/.test(text);
  if (hour === undefined || bare || Number(hour) < 1 || Number(hour) > 12) return typed;
  return `${(Number(hour) % 12) * 30 + Number(minutes ?? 0) / 2} deg`;
}
