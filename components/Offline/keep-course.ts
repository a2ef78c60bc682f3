/**
 * Keeps the whole course on the device, so that one visit is enough: 2 MB, less than one photo, and
 * a booth has no signal. The size stands in the page before anything is loaded. Where the device
 * asks to save data, or the reader has thrown the copy away, nothing is loaded until he presses.
 */
import { offerNewer } from './offer-newer.ts';

type Said = { have?: number; total?: number; ended?: 'whole' | 'full' | 'stopped' | 'dropped' };
type Ask = 'keep' | 'drop' | 'count';

const box = document.querySelector<HTMLElement>('[data-offline]');
/** The root of the site, from the link that stands here: the code that knows it would bring a form along. */
const root = new URL('..', box?.querySelector('a')?.href ?? location.href).pathname;
const status = box?.querySelector('[role="status"]');
// Not read aloud at each file, as what stands in the status would be.
const progress = document.createElement('span');
const button = document.createElement('button');
button.type = 'button';
status?.before(progress);
const keepText = `Keep the whole course on this device (${box?.dataset.offline} MB)`;
const declined = 'sixteenths.offline';

const endings = {
  whole: 'It is on this device now, and opens without a network.',
  full: 'The browser has no room for it. Pages you have opened may stay; free some room and press again.',
  stopped: 'Loading stopped before the end. What has come stays, and the next visit goes on.',
  dropped: 'It is off this device.',
};

function say(text: string): void {
  if (status) status.textContent = text;
  progress.textContent = '';
}

function offer(text: string, act: () => void): void {
  button.textContent = text;
  button.onclick = act;
  status?.after(' ', button);
}

function send(ask: Ask, worker: ServiceWorker, hear: (said: Said) => void): void {
  const { port1, port2 } = new MessageChannel();
  port1.onmessage = ({ data }) => hear(data);
  worker.postMessage(ask, [port2]);
}

function keep(worker: ServiceWorker): void {
  button.remove();
  send('keep', worker, ({ have, total, ended }) => {
    if (ended === undefined) {
      progress.textContent = `Loading: ${have} of ${total} files.`;
      return;
    }
    say(endings[ended]);
    if (ended === 'whole') offerDrop(worker);
    else offer(keepText, () => keep(worker));
  });
}

function offerDrop(worker: ServiceWorker): void {
  offer('Take it off this device', () => {
    remember('no');
    send('drop', worker, () => {
      say(endings.dropped);
      offerKeep(worker);
    });
  });
}

function offerKeep(worker: ServiceWorker): void {
  offer(keepText, () => {
    remember('yes');
    // A browser that is asked is slower to throw it away; it may also say no, and that is fine.
    navigator.storage?.persist?.().catch(() => {});
    keep(worker);
  });
}

function remember(choice: 'yes' | 'no'): void {
  try {
    localStorage.setItem(declined, choice);
  } catch {
    // Then it is asked again at the next visit.
  }
}

function asksFirst(): boolean {
  const { connection } = navigator as { connection?: { saveData: boolean; effectiveType: string } };
  let choice: string | null = null;
  try {
    choice = localStorage.getItem(declined);
  } catch {
    // A browser that keeps nothing here may still keep the course.
  }
  if (choice) return choice === 'no';
  return Boolean(connection?.saveData || connection?.effectiveType.endsWith('2g'));
}

async function begin(): Promise<void> {
  const { serviceWorker } = navigator;
  if (!serviceWorker) {
    say(
      isSecureContext
        ? 'This browser keeps no copy.'
        : 'A copy needs an address that begins with https.',
    );
    return;
  }
  try {
    const registration = await serviceWorker.register(workerAddress());
    offerNewer(registration);
    const { active } = await serviceWorker.ready;
    if (active) send('count', active, (said) => goOn(active, said));
  } catch {
    say('This browser let no copy be set up.');
  }
}

/** The one address of a script that is not written in the page itself, vouched for by name. */
function workerAddress(): string {
  const address = `${root}sw.js`;
  const { trustedTypes } = window as { trustedTypes?: TrustedTypes };
  const policy = trustedTypes?.createPolicy('own-worker', { createScriptURL: () => address });
  return (policy?.createScriptURL(address) as string | undefined) ?? address;
}

interface TrustedTypes {
  createPolicy(
    name: string,
    rules: { createScriptURL(text: string): string },
  ): { createScriptURL(text: string): unknown };
}

function goOn(worker: ServiceWorker, { have, total }: Said): void {
  if (have === total) {
    say(endings.whole);
    offerDrop(worker);
  } else if (asksFirst()) offerKeep(worker);
  else keep(worker);
}

/** What a phone needs for its home screen; nobody needs it to read, so it comes after the page. */
function link(rel: string, name: string): void {
  const link = document.createElement('link');
  link.rel = rel;
  link.href = root + name;
  document.head.append(link);
}

link('apple-touch-icon', 'icon-180.png');
link('manifest', 'course.webmanifest');
begin();
