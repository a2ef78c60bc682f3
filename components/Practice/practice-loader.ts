/** Shows the button where scripts run; the round itself is fetched when it is wanted. */
for (const box of document.querySelectorAll<HTMLElement>('[data-practice]')) {
  const button = box.querySelector<HTMLButtonElement>('.practice-start');
  if (!button || !box.dataset.practice) continue;
  button.hidden = false;
  button.addEventListener('click', async () => {
    button.disabled = true;
    (await import('./practice-live.ts')).practice(box);
  });
}
