interface Props {
  lines: readonly (Element | undefined)[];
}

/** Lines that the page has typeset, as copies: no text is read as HTML, which the page's policy forbids. */
export default function Typeset({ lines }: Props) {
  const fill = (box: HTMLElement | null) =>
    box?.replaceChildren(...lines.flatMap((line) => line?.cloneNode(true) ?? []));
  return <div class="worked" ref={fill} />;
}
