/** Fetches the board's code as soon as the page stands; without it the demo class stays in its place. */
const place = document.querySelector<HTMLElement>('#class-board');
const data = document.querySelector('#board-data')?.textContent;
if (place && data)
  import('./open-board.ts').then(({ openBoard }) => openBoard(place, JSON.parse(data)));

export {};
