import type { CollectionEntry } from 'astro:content';

/** The facts line of a lesson in words; what does not apply is left out. */
export function lessonFacts(lesson: CollectionEntry<'lessons'>['data']) {
  const { position, joint, electrodes, minutes, boothHours } = lesson;
  const rods = electrodes.map((it) => `${it.classification}, {${it.diameter}}`);
  const facts = [
    { name: 'Position', text: position.join(', ') },
    { name: 'Joint', text: joint.join(', ') },
    { name: 'Electrode', text: rods.join('; ') },
    { name: 'Reading', text: `${minutes} minutes` },
    { name: 'At the booth', text: boothHours === 0 ? '' : hours(boothHours) },
  ];
  return facts.filter(({ text }) => text !== '');
}

/** Booth time in words: `1 hour`, `2.5 hours`. */
export const hours = (count: number): string => (count === 1 ? '1 hour' : `${count} hours`);
