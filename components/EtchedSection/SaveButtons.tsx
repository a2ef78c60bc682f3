import type { SectionItem } from '../../lib/section/section-item.ts';
import type { Annotated } from './AnnotatedPicture.tsx';
import type { Picture } from './picture.ts';

interface Props {
  /** As it is shown, squared up or not. */
  picture: Picture;
  drawing: Annotated;
  passes: number;
  items(): SectionItem[];
}

/** Picture, drawing and numbers as files; the report on paper. What saves them is fetched by the press. */
export default function SaveButtons({ picture, drawing, passes, items }: Props) {
  const saver = () => import('./save-section.ts');
  const numbers = async () =>
    (await saver()).saveNumbers(drawing.readings, passes, items(), drawing.system);
  return (
    <p class="calculator-actions">
      <button type="button" onClick={async () => (await saver()).savePng(picture, drawing)}>
        Save picture
      </button>
      <button type="button" onClick={async () => (await saver()).saveSvg(picture, drawing)}>
        Save as SVG
      </button>
      <button type="button" onClick={numbers}>
        Save numbers
      </button>
      <button type="button" onClick={() => print()}>
        Print report
      </button>
    </p>
  );
}
