import { Component, type ComponentType } from 'preact';
import type { Booth } from '../../lib/booth/booth-link.ts';
import { shownBoothNumber } from '../../lib/booth/booth-number.ts';
import type { BoothWordInLink } from '../../lib/booth/booth-quantities.ts';
import type { ExerciseSheet } from '../../lib/booth/exercise-sheet.ts';
import PlateFromAbove from '../Coupon/PlateFromAbove.tsx';
import Said from '../Reasons/Said.tsx';
import Both from '../Units/Both.tsx';
import GradingTable from './GradingTable.tsx';
import { hasRoot } from './out-of-range.ts';
import { wordLabel } from './word-label.ts';
import type { Worked } from './work-numbers.ts';

interface Props {
  /** What is known of the task: all of an exercise, or the title of a lesson alone. */
  sheet: ExerciseSheet | { title: string; lesson: { title: string } };
  booth: Booth;
  link: string;
  worked: Worked | undefined;
  QrCode: ComponentType<{ text: string; name: string }>;
}

/** One side of a sheet that hangs in the booth. */
export default class BoothSheet extends Component<Props> {
  /** The link holds all that the booth is; thirty sheets are not drawn again for one key. */
  override shouldComponentUpdate({ sheet, link, worked }: Props) {
    const now = this.props;
    return sheet !== now.sheet || link !== now.link || worked !== now.worked;
  }

  override render() {
    return drawn(this.props);
  }
}

function drawn({ sheet, booth, link, worked, QrCode }: Props) {
  const exercise = 'slug' in sheet ? sheet : undefined;
  const { place, group, note } = booth;
  const figure =
    worked?.drawing ??
    (exercise?.plate && (
      <figure class="drawing">
        <PlateFromAbove {...exercise.plate} />
      </figure>
    ));
  return (
    <article class="booth-sheet" aria-label={place ? `Sheet of booth ${place}` : 'Booth sheet'}>
      <header>
        <div>
          <p class="booth-place">
            {place ? `Booth ${place}` : 'Booth ____'}
            {group && ` · group ${group}`}
          </p>
          <h3>{sheet.title}</h3>
          <p>{exercise ? <Said text={exercise.summary} /> : `Lesson: ${sheet.lesson.title}`}</p>
          {note && (
            <p class="booth-note">
              <b>From your instructor:</b> {note}
            </p>
          )}
          <p class="booth-caution">
            <b>This sheet hangs in the booth; the phone stays outside the curtain.</b> Electrode out
            of the holder whenever you stop. Mark the hot side. Training material: your site’s
            rules, the welding procedure and the label on the electrode box decide.
          </p>
        </div>
        <div class="booth-link">
          <QrCode text={link} name={`Code of the link to the lesson ${sheet.lesson.title}`} />
          <p>{sheet.lesson.title}, with these numbers</p>
        </div>
      </header>
      <div class="booth-columns">
        <div>
          <Setting exercise={exercise} booth={booth} />
          {figure}
          {worked && worked.rows.length + worked.problems.length > 0 && (
            <section>
              <h4>Numbers to hit</h4>
              <dl>
                {worked.rows.map(({ label, shown }) => (
                  <div key={label}>
                    <dt>{label}</dt>
                    <dd>
                      <Both {...shown} />
                    </dd>
                  </div>
                ))}
              </dl>
              {worked.problems.map((problem) => (
                <p key={problem} class="problem">
                  <Said text={problem} />
                </p>
              ))}
            </section>
          )}
        </div>
        <div>
          {exercise && <Reminders exercise={exercise} />}
          {exercise && <GradingTable points={exercise.points} leg={booth.numbers.leg} />}
          <p class="booth-signs">
            {['Learner', 'Attempt', 'Date', 'Heat no.', 'Electrode lot', 'Graded by'].map(
              (name) => (
                <span key={name}>{name}</span>
              ),
            )}
          </p>
        </div>
      </div>
    </article>
  );
}

function Setting({ exercise, booth }: { exercise: ExerciseSheet | undefined; booth: Booth }) {
  const words = Object.entries(booth.numbers) as [BoothWordInLink, string][];
  const facts = exercise
    ? exercise.procedure.filter(({ name }) => !/^(Steel|Cleaning|Technique|Preheat)$/.test(name))
    : [];
  const rooted = exercise !== undefined && hasRoot(exercise);
  const ownCurrent = (name: string) =>
    rooted && /, root\b/.test(name) ? booth.numbers.rootcurrent : booth.numbers.current;
  const long =
    exercise?.procedure.filter(({ name }) => /^(Preheat|Cleaning|Technique)$/.test(name)) ?? [];
  return (
    <section>
      <h4>Setting</h4>
      <dl>
        {words.map(([word, text]) => (
          <div key={word} class="booth-own">
            <dt>{wordLabel(word, rooted)}, this booth</dt>
            <dd>
              <Both {...shownBoothNumber(word, text)} />
            </dd>
          </div>
        ))}
        {exercise && exercise.rods.length > 0 && (
          <div>
            <dt>Electrodes</dt>
            <dd>
              {exercise.rods.map((text) => (
                <span key={text} class="booth-line">
                  <Said text={text} />
                </span>
              ))}
            </dd>
          </div>
        )}
        {exercise && exercise.metal.length > 0 && (
          <div>
            <dt>Metal</dt>
            <dd>
              {exercise.metal.map((text) => (
                <span key={text} class="booth-line">
                  <Said text={text} />
                </span>
              ))}
            </dd>
          </div>
        )}
        {facts.map(({ name, text }) => (
          <div key={name}>
            <dt>
              <Said
                text={name.startsWith('Current') && ownCurrent(name) ? `${name}, standard` : name}
              />
            </dt>
            <dd>
              <Said text={text} />
            </dd>
          </div>
        ))}
      </dl>
      {long.map(({ name, text }) => (
        <p key={name}>
          <b>{name}:</b> <Said text={text} />
        </p>
      ))}
    </section>
  );
}

function Reminders({ exercise }: { exercise: ExerciseSheet }) {
  return (
    <>
      {exercise.holdPoints.length > 0 && (
        <section>
          <h4>Stop and show it</h4>
          <ul>
            {exercise.holdPoints.map((text) => (
              <li key={text}>
                <Said text={text} /> <span class="booth-stamp" />
              </li>
            ))}
          </ul>
        </section>
      )}
      {exercise.faults.length > 0 && (
        <section>
          <h4>If you see it, change it</h4>
          <ul>
            {exercise.faults.map(({ see, change }) => (
              <li key={see}>
                <b>
                  <Said text={see} />:
                </b>{' '}
                <Said text={change} />
              </li>
            ))}
          </ul>
        </section>
      )}
      {exercise.selfCheck.length > 0 && (
        <section>
          <h4>Look at it yourself</h4>
          <ul class="booth-boxes">
            {exercise.selfCheck.map((text) => (
              <li key={text}>
                <Said text={text} />
              </li>
            ))}
          </ul>
        </section>
      )}
    </>
  );
}
