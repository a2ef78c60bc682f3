/** What is wrong with a drawing as written: anything off its sheet, numbers that are none, styles, ids. */

type Spot = [x: number, y: number];

/** Corners of a path, curves by their control points, which hold them in. Commands as drawings use them. */
function pathSpots(path: string): Spot[] {
  const spots: Spot[] = [];
  let [x, y] = [0, 0];
  for (const [, command = '', rest = ''] of path.matchAll(/([a-zA-Z])([^a-zA-Z]*)/g)) {
    const numbers = (rest.match(/-?[\d.]+/g) ?? []).map(Number);
    const per = { M: 2, L: 2, H: 1, V: 1, Q: 4, A: 7, Z: 0 }[command.toUpperCase()];
    if (per === undefined) throw new Error(`a path with the command ${command}`);
    const relative = command === command.toLowerCase();
    for (let at = 0; at < numbers.length; at += per || 1) {
      const step = numbers.slice(at, at + per);
      const [toX, toY] =
        per === 1
          ? command.toUpperCase() === 'H'
            ? [step[0], undefined]
            : [undefined, step[0]]
          : [step[per - 2], step[per - 1]];
      if (per === 4) spots.push([step[0] as number, step[1] as number]);
      x = toX === undefined ? x : relative ? x + toX : toX;
      y = toY === undefined ? y : relative ? y + toY : toY;
      spots.push([x, y]);
    }
  }
  return spots;
}

const number = (attributes: string, name: string): number =>
  Number(new RegExp(` ${name}="(-?[\\d.]+)"`).exec(attributes)?.[1] ?? Number.NaN);

/** Where a text begins and ends, for letters about as wide as those of a plain face. */
function textSpots(attributes: string, words: string): Spot[] {
  const us = words.replace(/<tspan class="metric">.*?<\/tspan>/g, '').replace(/<[^>]+>/g, '');
  const metric = words.replace(/<tspan class="us">.*?<\/tspan>/g, '').replace(/<[^>]+>/g, '');
  const wide = Math.max(us.length, metric.length) * (/bold/.test(attributes) ? 8 : 7.4);
  const anchor = /text-anchor="(\w+)"/.exec(attributes)?.[1];
  const small = /matrix\(.7 0 0 .7 ([\d.]+) ([\d.]+)\)/.exec(attributes);
  const [x, y] = small
    ? [Number(small[1]), Number(small[2])]
    : [number(attributes, 'x'), number(attributes, 'y')];
  const left = anchor === 'start' ? x : anchor === 'end' ? x - wide : x - wide / 2;
  return [
    [left, y - 9],
    [left + wide, y + 3],
  ];
}

/** All that is drawn without a transform, as corners on the sheet. */
export function spotsOf(svg: string): { what: string; spots: Spot[] }[] {
  const drawn: { what: string; spots: Spot[] }[] = [];
  for (const [, path = ''] of svg.matchAll(/ d="([^"]*)"/g))
    drawn.push({ what: 'a line', spots: pathSpots(path) });
  for (const [, attributes = ''] of svg.matchAll(/<circle([^>]*)>/g)) {
    const [x, y, r] = ['cx', 'cy', 'r'].map((name) => number(attributes, name)) as [
      number,
      number,
      number,
    ];
    drawn.push({
      what: 'a circle',
      spots: [
        [x - r, y - r],
        [x + r, y + r],
      ],
    });
  }
  for (const [, attributes = '', words = ''] of svg.matchAll(/<text([^>]*)>(.*?)<\/text>/gs))
    drawn.push({ what: `the words ${words}`, spots: textSpots(attributes, words) });
  return drawn;
}

export function sheetFaults(svg: string): string[] {
  const found: string[] = [];
  if (/NaN|Infinity|undefined/.test(svg)) found.push('a number that is none');
  if (/ style=| id=/.test(svg)) found.push('a style or an id');
  const [, height = ''] = /viewBox="0 0 320 ([\d.]+)"/.exec(svg) ?? [];
  for (const { what, spots } of spotsOf(svg)) {
    const out = spots.find(
      ([x, y]) => !(x >= -1 && x <= 321 && y >= -1 && y <= Number(height) + 1),
    );
    if (out) found.push(`${what} at ${out.map(Math.round).join(' ')} of 320 ${height}`);
  }
  return found;
}
