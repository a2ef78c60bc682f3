/** Files that a measured section is saved to. Made in the browser; nothing is sent. */
import { h, render } from 'preact';
import { writeCsv } from '../../lib/csv.ts';
import type { NamedReading } from '../../lib/section/fillet-readings.ts';
import type { SectionItem } from '../../lib/section/section-item.ts';
import { speak } from '../../lib/text/say.ts';
import { convert, type System, unitFor, unitSign } from '../../lib/units.ts';
import { download } from '../Shelf/download.ts';
import AnnotatedPicture, { type Annotated } from './AnnotatedPicture.tsx';
import type { Picture } from './picture.ts';

/** The annotated picture as a file of its own, the photograph inside it. */
export async function saveSvg(picture: Picture, drawing: Annotated): Promise<void> {
  const svg = markup({ ...drawing, address: await dataAddress(picture.blob) });
  download('section.svg', svg, 'image/svg+xml');
}

/** Photograph and drawing are laid over each other here: some browsers lose a picture within a picture. */
export async function savePng(picture: Picture, drawing: Annotated): Promise<void> {
  const canvas = document.createElement('canvas');
  canvas.width = picture.width;
  canvas.height = picture.height;
  const sheet = canvas.getContext('2d');
  const lines = new Blob([markup({ ...drawing, address: undefined })], { type: 'image/svg+xml' });
  const address = URL.createObjectURL(lines);
  for (const source of [picture.address, address])
    sheet?.drawImage(await loaded(source), 0, 0, canvas.width, canvas.height);
  URL.revokeObjectURL(address);
  const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/png'));
  if (blob) download('section.png', blob);
}

/** Readings and verdicts, in the reader's units. */
export function saveNumbers(
  readings: readonly NamedReading[],
  passes: number,
  items: readonly SectionItem[],
  system: System,
): void {
  const rows = readings.map(({ label, unit, value, uncertainty }) => {
    const own = unitFor(unit, system);
    const plain = (number: number) => Number(convert(number, unit, own).toPrecision(6));
    return [label, plain(value), plain(uncertainty), unitSign(own), undefined, undefined];
  });
  const count = passes > 0 ? [['Passes counted', passes, undefined, '', undefined, undefined]] : [];
  const verdicts = items.map(({ item, verdict, limit }) => [
    `Judged: ${item}`,
    undefined,
    undefined,
    '',
    speak(limit, system),
    verdict,
  ]);
  const columns = ['item', 'value', 'give or take', 'unit', 'limit', 'verdict'];
  download('section.csv', writeCsv(columns, [...rows, ...count, ...verdicts]), 'text/csv');
}

function markup(drawing: Annotated): string {
  const sheet = document.createElement('div');
  render(h(AnnotatedPicture, drawing), sheet);
  const svg = sheet.firstElementChild;
  return svg ? new XMLSerializer().serializeToString(svg) : '';
}

const dataAddress = (blob: Blob): Promise<string> =>
  new Promise((done, fail) => {
    const reader = new FileReader();
    reader.onload = () => done(String(reader.result));
    reader.onerror = () => fail(reader.error);
    reader.readAsDataURL(blob);
  });

const loaded = (address: string): Promise<HTMLImageElement> =>
  new Promise((done, fail) => {
    const image = new Image();
    image.onload = () => done(image);
    image.onerror = fail;
    image.src = address;
  });
