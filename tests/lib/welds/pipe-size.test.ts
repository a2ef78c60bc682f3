import { describe, expect, it } from 'vitest';
import pipeSize from '../../../lib/calculations/pipe-size.ts';
import { npsSizes, pipeRows, schedules } from '../../../lib/tables/pipe-b36.10.ts';

const rows = npsSizes.flatMap((nps) =>
  schedules.flatMap((schedule) => {
    const wall = pipeRows[nps].walls[schedule];
    return wall ? [{ nps, schedule, wall, outside: pipeRows[nps].outside }] : [];
  }),
);

describe('the table of pipe sizes', () => {
  it('lists every size once, each larger than the last', () => {
    expect([...npsSizes].sort()).toEqual(Object.keys(pipeRows).sort());
    const sizes = npsSizes.map((nps) => pipeRows[nps].outside[0]);
    expect(sizes).toEqual([...sizes].sort((a, b) => a - b));
  });

  it('prints the same pipe in both systems, but for the rounding', () => {
    for (const { nps, schedule, wall, outside } of rows) {
      const known = nps === '1-1/2' && schedule === 'XXS' ? 0.0101 : 0.0055;
      expect(Math.abs(wall[0] * 25.4 - wall[1]), `${nps} ${schedule}`).toBeLessThan(known);
      expect(Math.abs(outside[0] * 25.4 - outside[1]), nps).toBeLessThan(0.0505);
    }
  });

  it('has XS equal to schedule 80 up to NPS 8, and STD to schedule 40 up to NPS 10', () => {
    for (const [index, nps] of npsSizes.entries()) {
      const { walls } = pipeRows[nps];
      expect(walls.XS?.[0] === walls['80']?.[0], nps).toBe(index <= npsSizes.indexOf('8'));
      expect(walls.STD?.[0] === walls['40']?.[0], nps).toBe(index <= npsSizes.indexOf('10'));
    }
  });

  it('has XXS thicker than schedule 160 up to NPS 6 and thinner from NPS 8', () => {
    for (const { nps, wall } of rows.filter(({ schedule }) => schedule === '160')) {
      const heaviest = pipeRows[nps].walls.XXS?.[0];
      if (heaviest === undefined) continue;
      const upToSix = npsSizes.indexOf(nps) <= npsSizes.indexOf('6');
      expect(heaviest > wall[0], nps).toBe(upToSix);
    }
  });

  it('grows thicker with the schedule number', () => {
    for (const nps of npsSizes) {
      const { walls } = pipeRows[nps];
      const numbered = ['40', '80', '120', '160'].flatMap((schedule) => {
        const wall = walls[schedule as '40'];
        return wall ? [wall[0]] : [];
      });
      expect(new Set(numbered).size).toBe(numbered.length);
      expect(numbered).toEqual([...numbered].sort((a, b) => a - b));
    }
  });
});

describe('pipe-size', () => {
  it('weighs what a ring of steel of 7850 kg/m³ weighs', () => {
    for (const { nps, schedule, wall, outside } of rows) {
      const { massPerLength } = pipeSize.compute({ nps, schedule });
      const inside = outside[1] - 2 * wall[1];
      const ring = (Math.PI / 4) * (outside[1] ** 2 - inside ** 2) * 1e-6 * 7850;
      expect(massPerLength.metric / ring).toBeCloseTo(1, 5);
      // Two printed constants and two roundings of the same pipe.
      expect(massPerLength.us / (massPerLength.metric / 1.48816394)).toBeCloseTo(1, 2);
    }
  });
  it('mentions where the tables disagree', () => {
    const said = (nps: '10' | '8', schedule: '120' | '40') =>
      pipeSize
        .compute({ nps, schedule })
        .because.map(({ text }) => text)
        .join(' ');
    expect(said('8', '120')).toContain('0.718');
    expect(said('10', '40')).toContain('273.1');
    expect(said('8', '40')).not.toContain('Older');
  });
});
