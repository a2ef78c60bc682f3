import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { changed, redone, undone, undoOf } from '../../lib/undo.ts';

describe('undo', () => {
  it('goes back over every change and forward over every step back', () => {
    fc.assert(
      fc.property(fc.array(fc.integer(), { minLength: 1, maxLength: 90 }), (states) => {
        const [first, ...rest] = states as [number, ...number[]];
        let state = rest.reduce((all, next) => changed(all, next), undoOf(first));
        for (const wanted of states.toReversed().slice(1)) {
          state = undone(state);
          expect(state.now).toBe(wanted);
        }
        expect(undone(state)).toEqual(state);
        for (const wanted of rest) {
          state = redone(state);
          expect(state.now).toBe(wanted);
        }
        expect(redone(state)).toEqual(state);
      }),
    );
  });
  it('remembers a hundred states and no more', () => {
    let state = undoOf(0);
    for (let next = 1; next <= 150; next++) state = changed(state, next);
    expect(state.before).toHaveLength(100);
    for (let back = 0; back < 200; back++) state = undone(state);
    expect(state.now).toBe(50);
    for (let on = 0; on < 200; on++) state = redone(state);
    expect(state.now).toBe(150);
    expect(undone(redone(undone(state))).now).toBe(149);
  });
  it('gives up what was undone at the next change', () => {
    const state = changed(undone(changed(undoOf('a'), 'b')), 'c');
    expect(redone(state).now).toBe('c');
    expect(undone(state).now).toBe('a');
  });
});
