/**
 * The words of a piece of a lesson as a search reads them: without tags, links and marks, and with the
 * quantities and terms that stand in attributes. What a calculation answers is left out.
 */
export const plainText = (mdx: string): string =>
  mdx
    .replace(/<(?:Amount|Term)\s[^>]*?\bis="([^"]*)"[^>]*\/>/g, '$1')
    .replace(/<[^>]*given=\{\{[\s\S]*?\}\}[^>]*>/g, ' ')
    .replace(/<[^>]*>/g, ' ')
    .replace(/\[([^\]]*)\]\([^)]*\)/g, '$1')
    .replace(/\{[^{}]*\}/g, ' ')
    .replace(/[*_`#>|]/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
