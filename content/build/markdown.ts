import { satteri } from '@astrojs/markdown-satteri';
import { withApostrophes } from '../../components/Sentence/with-apostrophes.ts';

/** How lessons are read. Curled quotes would turn the inch sign of 1/4" into a closing quote. */
export const markdown = {
  syntaxHighlight: false,
  processor: satteri({
    features: { smartPunctuation: { quotes: false, dashes: true, ellipses: true } },
    mdastPlugins: [
      {
        name: 'apostrophes',
        text: ({ value }) =>
          value.includes("'") ? { type: 'text', value: withApostrophes(value) } : undefined,
      },
    ],
  }),
} as const;
