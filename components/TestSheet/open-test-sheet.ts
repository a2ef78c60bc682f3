/** Brings the test-day sheet to life; until its rules are there the blank record stands. */
import { h, render } from 'preact';
import { loadSheetRules } from '../../lib/test-sheet/sheet-rules.ts';
import TestSheetDesk from './TestSheetDesk.tsx';

export async function openTestSheet(place: HTMLElement): Promise<void> {
  const rules = await loadSheetRules();
  place.replaceChildren();
  render(h(TestSheetDesk, { rules }), place);
}
