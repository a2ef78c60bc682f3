/** A source's short name, from its id: `AWS D1.1`, `29 CFR 1910.133`, `Plate handbook`. */
export function sourceName(id: string): string {
  const law = /^osha-(\d+)-(\d+)$/.exec(id);
  if (law) return `29 CFR ${law[1]}.${law[2]}`;
  const cfr = /^(\d+)-cfr-(\d+)$/.exec(id);
  if (cfr) return `${cfr[1]} CFR ${cfr[2]}`;
  if (id.startsWith('onet-')) return id.replace('onet-', 'O*NET ');
  const plain = id.replace(/^(iso-tr|[a-z]+)-/, (_, body: string) => `${body.replace('-', '/')} `);
  if (!/\d/.test(id) && !/^(asme|nec)/.test(id))
    return plain[0]?.toUpperCase() + plain.slice(1).replaceAll('-', ' ');
  return plain.toUpperCase();
}
