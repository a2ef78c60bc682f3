/** The booth that the address of this page speaks of. */
import { type BoothRead, readBooth } from '../../lib/booth/booth-link.ts';

let read: BoothRead | undefined;

/** Read once: what a reader types later changes the address and not the booth. */
export function boothHere(): BoothRead {
  read ??= readBooth(new URLSearchParams(location.search));
  return read;
}

/** This page without the numbers of a booth. */
export function addressWithoutBooth(): string {
  const address = new URL(location.href);
  for (const key of [...address.searchParams.keys()])
    if (key.startsWith('booth.')) address.searchParams.delete(key);
  return address.href;
}
