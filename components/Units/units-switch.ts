/**
 * Brings the radio buttons to life: a choice shows at once, is remembered, is written into an address
 * that already names the units, fills the forms that are not alive yet and tells the live ones by
 * an event named "units" on the window.
 */
declare global {
  interface Window {
    /** Fills the forms that are not alive yet; defined by before-paint.js. */
    showUnits(): void;
  }
}

const root = document.documentElement;
const radios = document.querySelectorAll<HTMLInputElement>('input[name="units"]');

function choose(units: string): void {
  root.dataset.units = units;
  try {
    localStorage.setItem('sixteenths.units', units);
  } catch {
    // Storage may be closed to this page; the choice then holds until the next one.
  }
  const address = new URL(location.href);
  if (address.searchParams.has('units')) {
    address.searchParams.set('units', units);
    history.replaceState(history.state, '', address);
  }
  window.showUnits();
  dispatchEvent(new Event('units'));
}

function showChoice(): void {
  for (const radio of radios) radio.checked = radio.value === root.dataset.units;
}

for (const radio of radios) radio.addEventListener('change', () => choose(radio.value));
addEventListener('pageshow', showChoice);
showChoice();

export {};
