import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demoLog } from '../../../components/ElectrodeLog/demo-log.ts';
import { demoEvening } from '../../../content/demo-log.ts';
import { holderAt } from '../../../lib/electrode-log/holder-at.ts';
import { logEvents } from '../../../lib/exposure/exposure-log.ts';
import { electrodeLog, heldEvents, instantText } from '../../../lib/files/electrode-log.ts';
import { readFile, writeFile } from '../../../lib/files/file-kind.ts';

const saved = '2026-03-26T22:00:00Z';
const zone = 'America/Chicago';
const { log, moment } = demoLog(demoEvening, zone);
const text = writeFile(electrodeLog, log, saved);
const refusal = (changed: string) => {
  const read = readFile(electrodeLog, changed);
  return read.ok ? undefined : read.problem;
};

it('the example evening has something of everything to show', () => {
  const shown = log.holders.map((holder) => {
    const found = holderAt(holder, moment, zone);
    return found.counted ? (found.warning ?? found.state) : 'not counted';
  });
  expect(shown).toEqual([
    'in the oven, holding',
    'soon',
    'out, within its time',
    'over',
    'not counted',
  ]);
});

describe('the file of an electrode log', () => {
  it('comes back as it was', () => {
    expect(log.holders.flatMap(({ rows }) => rows).length).toBeGreaterThan(5);
    const read = readFile(electrodeLog, text);
    expect(read.ok && read.data).toEqual(log);
  });

  it('is refused with a sentence where it was cut short', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: text.length - 3 }), (at) => {
        expect(refusal(text.slice(0, at))).toMatch(/^This file/);
      }),
    );
  });

  it('is refused where it is another file, a newer one, or holds what no log holds', () => {
    expect(refusal(text.replace('electrode-log', 'class-board'))).toBe(
      'This file is not an electrode log',
    );
    expect(refusal(text.replace('"version": 1', '"version": 2'))).toMatch(/newer version/);
    expect(refusal(text.replace('"opened"', '"lost"'))).toMatch(/^This file does not fit at "hold/);
    expect(refusal(text.replace(/"at": "[^"]*"/, '"at": "2026-02-30T12:00Z"'))).toMatch(
      /an instant that no calendar has/,
    );
    expect(refusal(text.replace('Quiver booth 4', 'Quiver booth 7'))).toMatch(/the same name/);
  });

  it('knows every event that the clock knows', () => {
    expect([...heldEvents].sort()).toEqual([...logEvents].sort());
  });

  it('writes the minute in which an instant lies', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 4_000_000_000_000 }), (instant) => {
        const written = Date.parse(instantText(instant));
        expect(instant - written).toBeGreaterThanOrEqual(0);
        expect(instant - written).toBeLessThan(60_000);
      }),
    );
  });
});
