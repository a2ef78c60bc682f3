/**
 * What machines read about a page, as the text of a script element: schema.org in JSON-LD. A text
 * that holds `</script>` cannot end the element, since each `<` is written as an escape.
 */
export const jsonLd = (type: string, fields: Readonly<Record<string, unknown>>): string =>
  JSON.stringify({ '@context': 'https://schema.org', '@type': type, ...fields }).replaceAll(
    '<',
    '\\u003c',
  );
