Promise.all([import('./live-search.ts'), import('minisearch')]).then(
  ([{ liveSearch }, { default: Index }]) => liveSearch(Index),
);

export {};
