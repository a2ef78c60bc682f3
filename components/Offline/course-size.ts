/**
 * How much the whole course is, in megabytes: known when all pages are built, and written over these
 * marks by content/build/offline-copy.ts. A page that is built alone says no figure.
 */
const built = import.meta.env.PROD;

/** What goes over the air, compressed as hosts do. */
export const download = built ? '@course-download@' : 'a few';

/** What it takes on the device. */
export const room = built ? '@course-room@' : 'some more';
