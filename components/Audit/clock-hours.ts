/** Hours as a timetable writes them: `3 h 25 min`, `45 min`; nothing for none. */
export function clockHours(hours: number): string {
  const minutes = Math.round(hours * 60);
  const [whole, rest] = [Math.floor(minutes / 60), minutes % 60];
  return [whole > 0 && `${whole} h`, rest > 0 && `${rest} min`].filter(Boolean).join(' ');
}
