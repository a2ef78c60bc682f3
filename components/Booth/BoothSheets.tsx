import type { ComponentType } from 'preact';
import type { Booth } from '../../lib/booth/booth-link.ts';
import type { ExerciseSheet } from '../../lib/booth/exercise-sheet.ts';
import BoothSheet from './BoothSheet.tsx';
import type { Worked } from './work-numbers.ts';

/** One sheet to print: whose it is, what is on it and where its link leads. */
export interface Printed {
  key: string;
  /** Title of the exercise, or of the lesson. */
  title: string;
  booth: Booth;
  link: string;
  /** A sentence, as long as the exercise is not there; nothing for a lesson alone. */
  sheet: ExerciseSheet | string | undefined;
  worked: Worked | undefined;
}

interface Props {
  printed: readonly Printed[];
  QrCode: ComponentType<{ text: string; name: string }>;
}

/** What is known of a lesson alone; one object a title, so that it stays the same. */
const known = new Map<string, { title: string; lesson: { title: string } }>();
function alone(title: string) {
  const it = known.get(title) ?? { title, lesson: { title } };
  known.set(title, it);
  return it;
}

/** The sheets, and the large codes that are printed in their stead. */
export default function BoothSheets({ printed, QrCode }: Props) {
  return (
    <>
      <div class="booth-sheets">
        {printed.map(({ key, sheet, title, ...it }) =>
          typeof sheet === 'string' ? (
            <p key={key} role="status">
              {sheet}
            </p>
          ) : (
            <BoothSheet key={key} sheet={sheet ?? alone(title)} QrCode={QrCode} {...it} />
          ),
        )}
      </div>
      <div class="booth-cards">
        {printed.map(({ key, title, booth: { place, group }, link }) => (
          <article key={key} class="booth-card">
            <h3>{place ? `Booth ${place}` : 'Your booth'}</h3>
            <QrCode text={link} name="Code of the link to the lesson" />
            <p>
              {title}
              {group && `, group ${group}`}
            </p>
          </article>
        ))}
      </div>
    </>
  );
}
