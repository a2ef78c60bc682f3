/** Brings each calculator to life a little before it comes into view. */
const seen = new IntersectionObserver(
  (entries) => {
    for (const { isIntersecting, target } of entries) {
      if (!isIntersecting) continue;
      seen.unobserve(target);
      import('./live.ts').then(({ live }) => live(target as HTMLElement));
    }
  },
  { rootMargin: '400px' },
);
for (const box of document.querySelectorAll('[data-calculator]')) seen.observe(box);
