/** A page in the menus: its address from the root and its name. */
export interface MenuItem {
  path: string;
  name: string;
}

/** The few pages that every page names at its top. */
export const mainMenu: readonly MenuItem[] = [
  { path: '/lessons/', name: 'Lessons' },
  { path: '/exercises/', name: 'Exercises' },
  { path: '/calculators/', name: 'Calculators' },
  { path: '/faults/', name: 'Faults' },
];

/** All pages, by what the reader came for. */
export const allPages: readonly { title: string; items: readonly MenuItem[] }[] = [
  {
    title: 'Learn',
    items: [
      { path: '/lessons/', name: 'Lessons' },
      { path: '/calculators/', name: 'Calculators' },
      { path: '/section/', name: 'Etched section' },
      { path: '/record/', name: 'Your record' },
      { path: '/faults/', name: 'Faults, by what you see' },
      { path: '/glossary/', name: 'Words of the trade' },
      { path: '/search/', name: 'Search' },
    ],
  },
  {
    title: 'Teach',
    items: [
      { path: '/exercises/', name: 'Booth exercises' },
      { path: '/booth/', name: 'Booth link and sheet' },
      { path: '/grading/', name: 'Grading sheet' },
      { path: '/test-sheet/', name: 'Test-day sheet' },
      { path: '/practice/', name: 'Problem sets' },
      { path: '/class/', name: 'Class plan' },
      { path: '/board/', name: 'Class board' },
      { path: '/log/', name: 'Electrode log' },
    ],
  },
  {
    title: 'Check',
    items: [
      { path: '/audit/', name: 'Does the sequence hold?' },
      { path: '/audit/checks/', name: 'Published values beside ours' },
      { path: '/sources/', name: 'Sources' },
      { path: '/data/', name: 'The course as files' },
      { path: '/offline/', name: 'Without a network' },
      { path: '/about/', name: 'About, limits and privacy' },
    ],
  },
];
