/**
 * Loaded where the address holds the numbers of a booth: says so at the top of the page, and works
 * the examples again with them. The forms take their numbers themselves when they come to life.
 */
import { h, render } from 'preact';
import { boothParameters, queryOf } from '../../lib/booth/booth-link.ts';
import { shownBoothNumber } from '../../lib/booth/booth-number.ts';
import { loadCalculation } from '../../lib/calculations.ts';
import BoothBanner, { type Place } from './BoothBanner.tsx';
import { boothGiven } from './booth-given.ts';
import { addressWithoutBooth, boothHere } from './booth-here.ts';

async function followBooth(): Promise<void> {
  const main = document.querySelector('main');
  if (!main) return;
  const box = document.createElement('div');
  main.prepend(box);
  const show = (places: readonly Place[] | undefined) =>
    render(h(BoothBanner, { read: boothHere(), standard: addressWithoutBooth(), places }), box);
  show(undefined);
  followInFacts();
  const forms = await formsThatFollow();
  carryAlong();
  const examples = document.querySelectorAll<HTMLElement>('.worked-example');
  if (examples.length === 0) return show(forms);
  const { followInExample } = await import('./follow-in-example.ts');
  const followed = await Promise.all([...examples].map(followInExample));
  show([...followed.filter((place) => place !== undefined), ...forms]);
}

/** The electrodes among the facts under the title: the first of several is the one for the root. */
function followInFacts(): void {
  const { numbers } = boothHere().booth;
  for (const name of document.querySelectorAll('main .head .plate dt')) {
    const fact = name.nextElementSibling;
    if (name.textContent?.trim() !== 'Electrode' || !fact) continue;
    const sizes = [...fact.querySelectorAll('.us')];
    for (const [place, us] of sizes.entries()) {
      const first = place === 0 && sizes.length > 1;
      if (!first && place < sizes.length - 1) continue;
      const [word, kind] = first
        ? (['rootelectrode', 'rootclass'] as const)
        : (['electrode', 'class'] as const);
      const text = us.previousSibling;
      if (numbers[kind] && text)
        text.textContent = (text.textContent ?? '').replace(/E\d{4}\S*(?=,)/, numbers[kind]);
      if (!numbers[word]) continue;
      const shown = shownBoothNumber(word, numbers[word]);
      us.textContent = shown.us;
      if (us.nextElementSibling) us.nextElementSibling.textContent = shown.metric;
    }
  }
}

/** A calculator that is opened from here opens with the same numbers. */
function carryAlong(): void {
  const query = queryOf(boothParameters(boothHere().booth));
  for (const link of document.querySelectorAll<HTMLAnchorElement>('main a[href*="calculators/"]'))
    link.search = query;
}

/** The forms on the page that take a number of the booth. */
async function formsThatFollow(): Promise<Place[]> {
  const boxes = [...document.querySelectorAll<HTMLElement>('[data-calculator]')];
  const places = await Promise.all(
    boxes.map(async (box): Promise<Place[]> => {
      const { calculator = '', name = '' } = box.dataset;
      const { inputs } = await loadCalculation(calculator);
      if (Object.keys(boothGiven(calculator, inputs)).length === 0) return [];
      const title = document.getElementById(`${name}-title`);
      return title ? [{ kind: 'calculator', title: title.textContent ?? '', id: title.id }] : [];
    }),
  );
  return places.flat();
}

followBooth();
