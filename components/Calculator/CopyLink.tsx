import { useState } from 'preact/hooks';

/** Copies an address; where the browser refuses, the address bar already holds it. */
export default function CopyLink({ address }: { address: () => string }) {
  const [said, setSaid] = useState('');
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(address());
      setSaid('Copied.');
    } catch {
      setSaid('Copy it from the address bar: it holds these numbers.');
    }
  };
  return (
    <>
      <button type="button" onClick={copy}>
        Copy link to these numbers
      </button>
      <span role="status">{said}</span>
    </>
  );
}
