import type { Plugin } from 'vite';

const entry = /components\/Calculator\/live\.ts$/;
const sketch = /components\/Sketch\/(Sketch|Label|Dimension|Metal|Weld|hatch|scale)\.tsx?$/;

/**
 * Keeps everything that a live form needs in one file. Left alone, the bundler moves each piece
 * that a drawing or a list shares with it into a file of its own, which costs requests and bytes.
 */
export function oneLiveChunk(): Plugin {
  const imports = new Map<string, readonly string[]>();
  let reached: Set<string> | undefined;
  const needed = (): Set<string> => {
    if (reached) return reached;
    reached = new Set();
    const walk = (id: string) => {
      if (reached?.has(id)) return;
      reached?.add(id);
      for (const next of imports.get(id) ?? []) walk(next);
    };
    for (const id of imports.keys()) if (entry.test(id)) walk(id);
    return reached;
  };
  return {
    name: 'one-live-chunk',
    applyToEnvironment: (environment) => environment.name === 'client',
    moduleParsed: ({ id, importedIds }) => {
      imports.set(id, importedIds);
    },
    config: () => ({
      environments: {
        client: {
          build: {
            rolldownOptions: {
              output: {
                // Every page names its scripts; their component is name enough.
                entryFileNames: ({ name }) => `_astro/${name.replace(/\..*/, '')}.[hash].js`,
                advancedChunks: {
                  groups: [
                    // The loader shares these few lines, and must not fetch a form to get them.
                    {
                      name: 'import',
                      test: /preload-helper|dynamic-import/,
                      priority: 2,
                    },
                    { name: 'live', test: (id: string) => needed().has(id), priority: 1 },
                    // Every drawing draws with these; one file is smaller than seven.
                    { name: 'sketch', test: sketch, priority: 0 },
                  ],
                },
              },
            },
          },
        },
      },
    }),
  };
}
