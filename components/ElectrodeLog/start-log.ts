/** Fetches the log's code as soon as the page stands; without it the blank sheet stays in its place. */
const place = document.querySelector<HTMLElement>('#electrode-log');
const data = document.querySelector('#log-data')?.textContent;
if (place && data) import('./open-log.ts').then(({ openLog }) => openLog(place, JSON.parse(data)));

export {};
