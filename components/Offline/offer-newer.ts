/**
 * Says that a newer version is there, and takes it when the reader presses. The page is left as it is,
 * with all that was typed; the next one that is opened is new.
 */
export function offerNewer(registration: ServiceWorkerRegistration): void {
  // Without a worker in charge this is the first visit, and there is nothing older.
  if (!navigator.serviceWorker.controller) return;
  if (registration.waiting) show(registration.waiting);
  registration.addEventListener('updatefound', () => {
    const coming = registration.installing;
    coming?.addEventListener('statechange', () => {
      if (coming.state === 'installed') show(coming);
    });
  });
}

function show(newer: ServiceWorker): void {
  document.querySelector('.newer')?.remove();
  const bar = document.createElement('div');
  bar.className = 'newer screen-only';
  // Over everything else, at the lower edge.
  bar.popover = 'manual';
  bar.style.setProperty('margin', 'auto auto 0');
  const text = document.createElement('span');
  text.setAttribute('role', 'status');
  const use = document.createElement('button');
  use.textContent = 'Use it';
  use.onclick = () => {
    newer.postMessage('use');
    text.textContent = 'The next page you open is of the newer version. What you typed here stays.';
    use.remove();
    later.textContent = 'Close';
    later.focus();
  };
  const later = document.createElement('button');
  later.textContent = 'Later';
  later.onclick = () => bar.remove();
  bar.append(text, ' ', use, ' ', later);
  document.body.append(bar);
  bar.showPopover();
  // Set after it is in the page, so that it is read aloud.
  text.textContent = 'There is a newer version of this course.';
}
