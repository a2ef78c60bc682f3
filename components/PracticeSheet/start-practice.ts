/** Fetches the desk's code as soon as the page stands; without it an example set stays in its place. */
const place = document.querySelector<HTMLElement>('#practice-desk');
const data = document.querySelector('#practice-lists')?.textContent;
if (place && data)
  import('./open-practice.ts').then(({ openPractice }) => openPractice(place, JSON.parse(data)));

export {};
