/** Clocks in words, of the wall and of the pipe. Minutes are whole: nobody logs seconds. */

/** Hours as the clock on the wall shows them: 18.25 is `18:15`, 25 is `1:00 the next day`. */
export function wallClock(hours: number): string {
  const minutes = Math.round(hours * 60);
  const days = Math.floor(minutes / 1440);
  const day = ['', ' the next day'][days] ?? `, ${days} days later`;
  return `${onClock(minutes % 1440)}${day}`;
}

const onClock = (minutes: number): string =>
  `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`;

/** A length of time: 2.75 is `2 h 45 min`. */
export function durationText(hours: number): string {
  const minutes = Math.round(hours * 60);
  const whole = Math.floor(minutes / 60);
  const rest = minutes % 60;
  if (whole === 0) return `${rest} min`;
  return rest === 0 ? `${whole} h` : `${whole} h ${rest} min`;
}

/** A place on a joint as the hours name it: 0° is `12:00`, 120° is `4:00`. */
export function clockFace(angle: number): string {
  const minutes = Math.round((angle % 360) * 2) % 720;
  return onClock(minutes < 60 ? minutes + 720 : minutes);
}
