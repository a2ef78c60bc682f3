/** Names the parts of a link that mean nothing here, so that none is dropped in silence. */
export default function AddressNote({ strays }: { strays: readonly string[] }) {
  if (strays.length === 0) return null;
  const names = strays.map((stray) => `“${stray.slice(0, 60)}”`).join(', ');
  return (
    <p class="problem" role="status">
      The link holds {names}, which this calculator cannot use. The rest was taken over.
    </p>
  );
}
