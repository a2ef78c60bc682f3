interface Props {
  links: readonly { place: string | undefined; link: string }[];
  onCopy(link: string): void;
}

/** The links of the task at hand, one a booth. */
export default function LinkList({ links, onCopy }: Props) {
  return (
    <section class="screen-only" aria-labelledby="booth-links">
      <h2 id="booth-links">{links.length === 1 ? 'The link' : `${links.length} links`}</h2>
      <ul class="booth-links">
        {links.map(({ place, link }) => (
          <li key={place ?? ''}>
            {place && <b>Booth {place} </b>}
            <a href={link}>{link}</a>{' '}
            <button type="button" onClick={() => onCopy(link)}>
              Copy
              <span class="unseen"> the link{place && ` of booth ${place}`}</span>
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
