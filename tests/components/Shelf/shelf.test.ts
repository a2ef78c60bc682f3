import * as v from 'valibot';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { Shelf } from '../../../components/Shelf/shelf.ts';

const kind = { name: 'note', title: 'a note', version: 1, schema: v.object({ text: v.string() }) };
const shelf = () => new Shelf(kind, () => ({ text: '' }));
const key = 'sixteenths.note';
let kept: Map<string, string>;

beforeEach(() => {
  kept = new Map();
  vi.stubGlobal('localStorage', {
    getItem: (name: string) => kept.get(name) ?? null,
    setItem: (name: string, value: string) => void kept.set(name, value),
    removeItem: (name: string) => void kept.delete(name),
  });
});
afterEach(() => vi.unstubAllGlobals());

describe('a shelf', () => {
  it('is empty at first, then gives back what was put there', () => {
    expect(shelf().take()).toEqual({ data: { text: '' } });
    const mine = shelf();
    mine.take();
    expect(mine.put({ text: 'seven' })).toBeUndefined();
    expect(shelf().take()).toEqual({ data: { text: 'seven' } });
  });
  it('sets aside what it cannot read', () => {
    kept.set(key, 'torn');
    expect(shelf().take().problem).toMatch(/set aside/);
    expect(kept.get(`${key}.damaged`)).toBe('torn');
  });
  it('leaves alone what a newer version keeps', () => {
    const newer = '{"sixteenths":"note","version":2,"data":{}}';
    kept.set(key, newer);
    const mine = shelf();
    expect(mine.take().problem).toMatch(/newer/);
    expect(mine.put({ text: 'x' })).toMatch(/newer/);
    expect(kept.get(key)).toBe(newer);
  });
  it('does not write over what another tab has put there', () => {
    const [mine, other] = [shelf(), shelf()];
    mine.take();
    other.take();
    other.put({ text: 'other' });
    expect(mine.put({ text: 'mine' })).toMatch(/another tab/i);
    expect(shelf().take().data.text).toBe('other');
  });
  it('says when there is no room, and when the browser keeps nothing', () => {
    const mine = shelf();
    mine.take();
    localStorage.setItem = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
    expect(mine.put({ text: 'x' })).toMatch(/no room/);
    localStorage.getItem = () => {
      throw new DOMException('refused', 'SecurityError');
    };
    expect(shelf().take().problem).toMatch(/does not let/);
  });
});
