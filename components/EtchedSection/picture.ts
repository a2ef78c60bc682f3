/** A picture that is measured on. It never leaves the browser. */
export interface Picture {
  name: string;
  width: number;
  height: number;
  blob: Blob;
  /** An object URL of the blob. */
  address: string;
  isSample: boolean;
}
