import type { Plugin } from 'vite';

/**
 * Makes `import('./chunk.js')` come out as written. Vite wraps each dynamic import in a helper that
 * first fetches style sheets and further chunks; ours have none, and the helper would be four
 * times as large as the loader that uses it.
 */
export function plainDynamicImports(): Plugin[] {
  return [
    {
      name: 'no-preload-helper',
      enforce: 'pre',
      load: (id) =>
        id.includes('vite/preload-helper')
          ? 'export const __vitePreload = (load) => load();'
          : undefined,
    },
    {
      name: 'no-preload-lists',
      generateBundle: {
        order: 'post',
        handler(_, bundle) {
          for (const chunk of Object.values(bundle)) {
            if (chunk.type === 'chunk') chunk.code = withoutHelper(withoutPreloadLists(chunk.code));
          }
        },
      },
    },
  ];
}

function withoutPreloadLists(code: string): string {
  return code
    .replace(/^(?:const|var|let) __vite__mapDeps=.*;?$\n?/m, '')
    .replace(/,\s*__vite__mapDeps\([^)]*\)/g, '');
}

/** What is left of the helper is shorter than the request for it. */
function withoutHelper(code: string): string {
  return code.replace(
    /import\s*\{\s*(?:\w+ as )?(\w+)\s*\}\s*from\s*["'`]\.\/import\.[\w-]+\.js["'`];/,
    (_, name) => `var ${name}=e=>e();`,
  );
}
