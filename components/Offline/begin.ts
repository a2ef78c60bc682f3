/** Waits until the page has all it needs, and then fetches what keeps the course. */
addEventListener('load', () => import('./keep-course.ts'));

export {};
