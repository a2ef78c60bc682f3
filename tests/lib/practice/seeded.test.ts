/** The numbers behind a set: printed sheets name a set, so it must never come out otherwise. */
import { describe, expect, it } from 'vitest';
import { seeded } from '../../../lib/practice/seeded.ts';

const mask = 0xffffffffn;

/** FNV-1a, 32 bits, over the letters (Fowler, Noll and Vo; constants as in RFC 9923). */
function hashed(text: string): bigint {
  let hash = 2166136261n;
  for (const letter of text) hash = ((hash ^ BigInt(letter.charCodeAt(0))) * 16777619n) & mask;
  return hash;
}

/** Mulberry32 (public domain) in whole numbers of any size. */
function* numbers(state: bigint): Generator<number> {
  for (;;) {
    state = (state + 0x6d2b79f5n) & mask;
    let mixed = ((state ^ (state >> 15n)) * (state | 1n)) & mask;
    mixed ^= (mixed + (((mixed ^ (mixed >> 7n)) * (mixed | 61n)) & mask)) & mask;
    yield Number((mixed ^ (mixed >> 14n)) & mask) / 2 ** 32;
  }
}

describe('seeded', () => {
  it('hashes as the published test vector does', () => {
    // FNV-1a of "a" is e40c292c.
    expect(hashed('a')).toBe(0xe40c292cn);
  });

  it.each([[['a']], [['heat-input', 4021, 3]], [['']], [['fresh', 0]], [['thousand', 99999, 29]]])(
    'gives for %j the numbers of a restatement without overflow',
    (seed) => {
      const next = seeded(...seed);
      const wanted = numbers(hashed(seed.join('|')));
      for (let place = 0; place < 50; place++) expect(next()).toBe(wanted.next().value);
    },
  );

  it('spreads evenly enough to pick problems by', () => {
    const next = seeded('spread');
    const tenths = Array<number>(10).fill(0);
    for (let i = 0; i < 10_000; i++) {
      const place = Math.floor(next() * 10);
      tenths[place] = (tenths[place] ?? 0) + 1;
    }
    for (const count of tenths) expect(Math.abs(count - 1000)).toBeLessThan(150);
  });
});
