export interface KeptTexts {
  /** HTML of a field's label and of the help under it, by field; made at build. */
  [field: string]: { label: string; help: string };
}

interface Props {
  as: 'label' | 'legend' | 'div';
  html: string | undefined;
  for?: string;
}

/**
 * A part that never changes while the page lives. Hydration keeps what the build drew, so neither
 * its text nor the code that makes it is sent again.
 */
export default function Kept({ as: Tag, html = '', ...rest }: Props) {
  return <Tag {...rest} dangerouslySetInnerHTML={{ __html: html }} />;
}
