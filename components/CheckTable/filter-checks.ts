/** Shows the calculations that have a value of the chosen source, mark and difference, and counts. */
const form = document.querySelector<HTMLFormElement>('.check-filter');
const rows = document.querySelectorAll<HTMLElement>('tr[data-kinds]');

form?.addEventListener('change', () => {
  const chosen = [...form.querySelectorAll('select')].map(({ value }) => value);
  const wanted = chosen.slice(0, 3);
  const calculation = chosen[3];
  let values = 0;
  let shown = 0;
  for (const row of rows) {
    const kinds = (row.dataset.kinds ?? '').split(' ').map((kind) => kind.split('.'));
    const own = !calculation || calculation === row.id ? kinds : [];
    const count = own
      .filter((kind) => wanted.every((one, place) => one === '' || one === kind[place]))
      .reduce((sum, kind) => sum + Number(kind[3]), 0);
    row.hidden = count === 0;
    values += count;
    shown += count > 0 ? 1 : 0;
  }
  const status = form.querySelector('[role=status]');
  if (status) status.textContent = `${values} values in ${shown} calculations`;
});
form?.addEventListener('submit', (event) => event.preventDefault());
// The browser may have kept the boxes over a reload.
form?.dispatchEvent(new Event('change'));

export {};
