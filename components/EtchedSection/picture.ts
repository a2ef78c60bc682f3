/** A picture that is measured on. It never leaves the browser. */
export interface Picture {
  name: string;
  width: number;
  height: number;
  blob: Blob;
  /** An object URL of the blob. */
  address: string;
  /** One of the drawn samples, whose true sizes are known. */
  sample: SampleName | undefined;
}

export type SampleName = 'fillet' | 'groove';
