import type { Picture, SampleName } from './picture.ts';

/** Longest side that is kept: finer than a finger can mark, and easy on a phone's memory. */
const longest = 2000;
const smallest = 100;

const unreadable =
  'Picture: this file cannot be opened as a picture. JPEG, PNG and WebP work everywhere; a phone may be set to save in one of these.';

/**
 * Opens a picture the right way up, scaled down if it is large. Nothing is sent anywhere.
 * @returns the picture, or a sentence that says why not
 */
export async function readPicture(
  file: Blob,
  name: string,
  sample?: SampleName,
): Promise<Picture | { problem: string }> {
  const original = URL.createObjectURL(file);
  try {
    const image = await loaded(original);
    if (!image) return { problem: unreadable };
    const { naturalWidth, naturalHeight } = image;
    if (Math.min(naturalWidth, naturalHeight) < smallest)
      return {
        problem: `Picture: only ${naturalWidth} × ${naturalHeight} pixels, too few to measure on.`,
      };
    const canvas = await drawn(file, image);
    const blob = canvas && (await encoded(canvas, /png|svg/.test(file.type)));
    if (!canvas || !blob) return { problem: unreadable };
    const { width, height } = canvas;
    // Gives a phone its memory back before the next picture is taken.
    canvas.width = canvas.height = 0;
    return { name, width, height, blob, address: URL.createObjectURL(blob), sample };
  } finally {
    URL.revokeObjectURL(original);
  }
}

const loaded = (address: string): Promise<HTMLImageElement | undefined> =>
  new Promise((done) => {
    const image = new Image();
    image.onload = () => done(image.naturalWidth > 0 ? image : undefined);
    image.onerror = () => done(undefined);
    image.src = address;
  });

/**
 * The picture on a canvas. A large one is scaled down while it is decoded, which spares the memory
 * of its full size; what cannot be decoded that way is drawn from the loaded image.
 */
async function drawn(file: Blob, image: HTMLImageElement): Promise<HTMLCanvasElement | undefined> {
  const { naturalWidth, naturalHeight } = image;
  const share = Math.min(1, longest / Math.max(naturalWidth, naturalHeight));
  const canvas = document.createElement('canvas');
  canvas.width = Math.round(naturalWidth * share);
  canvas.height = Math.round(naturalHeight * share);
  const sheet = canvas.getContext('2d');
  if (!sheet) return undefined;
  const bitmap = share < 1 && (await scaledDown(file, canvas.width, canvas.height));
  try {
    sheet.drawImage(bitmap || image, 0, 0, canvas.width, canvas.height);
  } catch {
    return undefined;
  }
  if (bitmap) bitmap.close();
  return canvas;
}

/** Undefined where the browser cannot, or turns the picture after it has scaled it. */
async function scaledDown(file: Blob, width: number, height: number) {
  try {
    const bitmap = await createImageBitmap(file, {
      imageOrientation: 'from-image',
      resizeWidth: width,
      resizeHeight: height,
      resizeQuality: 'high',
    });
    return bitmap.width === width && bitmap.height === height ? bitmap : undefined;
  } catch {
    return undefined;
  }
}

const encoded = (canvas: HTMLCanvasElement, lossless: boolean): Promise<Blob | null> =>
  new Promise((done) => canvas.toBlob(done, lossless ? 'image/png' : 'image/jpeg', 0.92));
