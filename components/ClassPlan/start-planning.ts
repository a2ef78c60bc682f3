/** Fetches the plan's code as soon as the page stands; without it the demo term stays in its place. */
const place = document.querySelector<HTMLElement>('#class-plan');
const data = document.querySelector('#class-data')?.textContent;
if (place && data)
  import('./open-plan.ts').then(({ openPlan }) => openPlan(place, JSON.parse(data)));

export {};
