/** The place of a source on the page of sources, as an id that HTML takes: `aws-d1-1`. */
export const sourceAnchor = (id: string): string => `source-${id.replaceAll('.', '-')}`;
