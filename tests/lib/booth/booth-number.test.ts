/** A booth's number at its limits, which are custom of booths (no source), and as it is written and shown. */
import { describe, expect, it } from 'vitest';
import { readBoothNumber, shownBoothNumber } from '../../../lib/booth/booth-number.ts';
import {
  type BoothWordInLink,
  boothQuantities,
  isBoothWord,
  isOfRoot,
} from '../../../lib/booth/booth-quantities.ts';

const read = (word: BoothWordInLink, text: string) => {
  const found = readBoothNumber(word, text);
  return found.ok ? found.text : found.problem;
};

describe('a number of a booth', () => {
  it.each<[BoothWordInLink, number, number, string]>([
    ['electrode', 0.04, 0.3125, 'in'],
    ['rootelectrode', 0.04, 0.3125, 'in'],
    ['current', 20, 550, 'A'],
    ['rootcurrent', 20, 550, 'A'],
    ['voltage', 14, 50, 'V'],
    ['thickness', 0.06, 4, 'in'],
    ['leg', 0.06, 2, 'in'],
    ['opening', 0, 1, 'in'],
    ['width', 0.05, 2, 'in'],
    ['overlap', 0, 95, '%'],
    ['runout', 1, 40, 'in'],
  ])('%s is read from %d to %d %s, and not beyond', (word, min, max, unit) => {
    for (const good of [min, max, (min + max) / 2])
      expect(readBoothNumber(word, `${good} ${unit}`).ok).toBe(true);
    expect(read(word, `${min - 0.001} ${unit}`)).toMatch(/must be at least \{/);
    expect(read(word, `${max + 0.001} ${unit}`)).toMatch(/must be at most \{/);
  });

  it('beyond its limits is refused with the limit on the rule, or as a decimal where none takes it', () => {
    const why = 'covered electrodes are made from {1/16 in} to {5/16 in}';
    expect(read('electrode', '1/2')).toBe(`Electrode diameter must be at most {5/16 in}: ${why}`);
    expect(read('electrode', '1/64')).toBe(`Electrode diameter must be at least {0.04 in}: ${why}`);
    expect(read('current', '10')).toBe(
      'Current must be at least {20 A}: covered electrodes run between {20 A} and {550 A}',
    );
  });

  it('may be twenty-four signs long', () => {
    expect(read('leg', '1/4 in'.padEnd(24))).toBe('1/4in');
    expect(read('leg', '1/4 in'.padEnd(25))).toMatch(/^Fillet leg to reach is too long: “1\/4 in/);
  });

  it('is kept as typed, its blanks as a dash and its unit in the first spelling', () => {
    expect(read('leg', '1   1/2"')).toBe('1-1/2in');
    expect(read('leg', '\u00a01\u00a01/2 inches ')).toBe('1-1/2in');
    expect(read('thickness', '9,5mm')).toBe('9,5mm');
    expect(read('current', '1.25e2 amps')).toBe('1.25e2A');
    expect(read('current', '1250e-01 A')).toBe('1250e-01A');
    expect(read('current', '+125')).toBe('+125A');
    expect(read('overlap', ' 40 % ')).toBe('40');
    expect(read('class', ' e7018 ')).toBe('E7018');
  });

  it('is shown as typed in its own system, whatever another way to write it would be', () => {
    expect(shownBoothNumber('leg', '0.3125in').us).toBe('0.3125\u00a0in');
    expect(shownBoothNumber('thickness', '9,5mm').metric).toBe('9,5\u00a0mm');
    expect(shownBoothNumber('current', '97,5A')).toEqual({
      us: '97,5\u00a0A',
      metric: '97,5\u00a0A',
    });
    expect(shownBoothNumber('current', '1.25e2A').us).toBe('1.25e2\u00a0A');
  });
});

it('knows its words, and which of them are of the root alone', () => {
  const words = Object.keys(boothQuantities) as BoothWordInLink[];
  expect(words.every(isBoothWord)).toBe(true);
  expect(isBoothWord('toString')).toBe(false);
  expect(words.filter(isOfRoot)).toEqual(['rootclass', 'rootelectrode', 'rootcurrent']);
});
