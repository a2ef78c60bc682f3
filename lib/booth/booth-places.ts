/** Several booths in one line: `7-10, 12, grinder`. */
import { quoted } from '../text/quoted.ts';

export interface PlacesRead {
  places: string[];
  problems: string[];
}

/** More booths than any shop has; a larger number is a slip of the finger. */
const most = 40;
const longest = 12;

/** Numbers, ranges of numbers and names, parted by commas; each booth once, in the order typed. */
export function readPlaces(text: string): PlacesRead {
  const places: string[] = [];
  const problems: string[] = [];
  for (const part of text.split(/[,;]/)) {
    const one = part.replace(/\s+/g, ' ').trim();
    if (one === '') continue;
    const range = /^(\d{1,4}) ?(?:-|–|to) ?(\d{1,4})$/.exec(one);
    if (!range) {
      if ([...one].length > longest) problems.push(`The booth ${quoted(one, longest)} is too long`);
      else places.push(one);
      continue;
    }
    const [from, to] = [Number(range[1]), Number(range[2])];
    if (to < from) problems.push(`Booths ${quoted(one)} run backward`);
    else if (to - from >= most)
      problems.push(`Booths ${quoted(one)} are more than ${most}, which is the most at once`);
    else for (let place = from; place <= to; place++) places.push(String(place));
  }
  const each = [...new Set(places)];
  if (each.length > most)
    problems.push(`These are more than ${most} booths; the first ${most} count`);
  return { places: each.slice(0, most), problems };
}
