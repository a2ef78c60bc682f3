/** The row of buttons under a worked example; what they do comes when one of them is pressed. */
const names = {
  last: 'Last step',
  two: 'Two steps',
  fresh: 'Fresh numbers',
  whole: 'Show it whole',
};

export type Way = keyof typeof names;

export function fadeRow(example: HTMLElement): void {
  const row = document.createElement('p');
  row.className = 'calculator-actions screen-only';
  row.setAttribute('role', 'group');
  row.setAttribute('aria-label', 'Leave to me');
  row.append('Leave to me:');
  for (const [way, name] of Object.entries(names)) {
    const button = document.createElement('button');
    button.type = 'button';
    button.textContent = name;
    button.hidden = way === 'whole';
    button.onclick = async () => {
      await (await import('./fade.ts')).fade(example, row, way as Way);
      for (const other of row.querySelectorAll('button'))
        other.ariaPressed = String(other === button && way !== 'whole');
      (row.lastChild as HTMLElement).hidden = way === 'whole';
    };
    row.append(button);
  }
  example.lastElementChild?.before(row);
}
