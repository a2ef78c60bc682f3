/** Fetches the record's code as soon as the page stands. */
const place = document.querySelector<HTMLElement>('#learner-record');
const data = document.querySelector('#record-lists')?.textContent;
if (place && data)
  import('./open-record.ts').then(({ openRecord }) => openRecord(place, JSON.parse(data)));

export {};
