import type { ComponentChildren } from 'preact';

interface Props {
  /** What a reader of US customary units sees. */
  us: ComponentChildren;
  /** What a reader of metric units sees. */
  metric: ComponentChildren;
  /** The element that carries each: `tspan` inside SVG text, `mn` inside MathML. */
  as?: 'span' | 'tspan' | 'mn' | 'div';
}

/**
 * A text in both unit systems; the style sheet hides the one that the reader has not chosen, so it
 * is not read aloud either. Texts that are equal are written once.
 */
export default function Both({ us, metric, as: Tag = 'span' }: Props) {
  if (us === metric) return <>{us}</>;
  return (
    <>
      <Tag class="us">{us}</Tag>
      <Tag class="metric">{metric}</Tag>
    </>
  );
}
