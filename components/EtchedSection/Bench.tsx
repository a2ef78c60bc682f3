import { Component, createRef } from 'preact';
import type { Point } from '../../lib/geometry/outline.ts';
import { printMeasured } from '../../lib/section/measured-text.ts';
import { planeMap } from '../../lib/section/picture-plane.ts';
import {
  filletMarks,
  placedPlane,
  placedSection,
  type TypedScale,
} from '../../lib/section/placed-section.ts';
import { sampleLength, sampleMarks } from '../../lib/section/sample-section.ts';
import { scaleBar, sectionLines } from '../../lib/section/section-lines.ts';
import {
  isPlaced,
  type MarkName,
  markCounts,
  noMarks,
  type Placed,
  withMark,
  withMovedMark,
  withoutMark,
} from '../../lib/section/section-marks.ts';
import { namedReadings } from '../../lib/section/section-readings.ts';
import { type Seen, sectionItems } from '../../lib/section/section-verdicts.ts';
import { type MacroCode, macroCodes } from '../../lib/tables/macro-limits.ts';
import { changed, type Undo, type undone, undoOf } from '../../lib/undo.ts';
import { type System, unitFor } from '../../lib/units.ts';
import { currentSystem } from '../Calculator/already-there.ts';
import AnnotatedPicture, { type Annotated, barLengths } from './AnnotatedPicture.tsx';
import Choice from './Choice.tsx';
import LengthBox from './LengthBox.tsx';
import { type LengthEntry, type LengthName, lengthText, readLength } from './lengths.ts';
import type { MarkId } from './MarkHandles.tsx';
import MarkingTools from './MarkingTools.tsx';
import PictureView from './PictureView.tsx';
import type { Picture } from './picture.ts';
import Readings from './Readings.tsx';
import { type Step, steps } from './steps.ts';
import Verdicts from './Verdicts.tsx';

interface Props {
  picture: Picture;
}

type Edge = '1' | '2' | '4';
type Looked = 'not looked' | NonNullable<Seen>;

interface State {
  marks: Undo<Placed>;
  step: MarkName;
  by: TypedScale['by'];
  lengths: Record<LengthName, LengthEntry>;
  edge: Edge;
  code: MacroCode;
  cracks: Looked;
  unfused: Looked;
  slice: string;
  moving: boolean;
  picked: MarkId | undefined;
  focus: MarkId | undefined;
  /** What a screen reader says once the hand rests. */
  said: string;
  system: System;
}

const looks = (['not looked', 'none seen', 'seen'] as const).map((one) => [one, one] as const);

/** The picture, what is marked on it, what that measures and how it is judged. */
export default class Bench extends Component<Props, State> {
  override state: State = this.opening(currentSystem());
  view = createRef<PictureView>();
  saying: ReturnType<typeof setTimeout> | undefined;
  nudged: string | undefined;

  opening(system: System): State {
    const { isSample } = this.props.picture;
    const empty: LengthEntry = { text: '', system };
    return {
      marks: undoOf(noMarks),
      step: 'ends',
      by: 'distance',
      lengths: {
        length: isSample ? { text: `${sampleLength}`, system: 'metric' } : empty,
        width: empty,
        height: empty,
        lengthError: { text: system === 'us' ? '0.004' : '0.1', system },
        size: isSample ? { text: system === 'us' ? '5/16' : '8', system } : empty,
      },
      edge: '2',
      code: 'AWS D1.1',
      cracks: 'not looked',
      unfused: 'not looked',
      slice: isSample ? 'Sample' : '',
      moving: false,
      picked: undefined,
      focus: undefined,
      said: '',
      system,
    };
  }

  override componentDidMount() {
    addEventListener('units', this.onUnits);
  }

  override componentWillUnmount() {
    removeEventListener('units', this.onUnits);
    clearTimeout(this.saying);
  }

  onUnits = () => this.setState({ system: currentSystem() });

  /** The steps of this way of setting the scale. */
  steps = (by = this.state.by): readonly Step[] =>
    steps.filter(({ name }) => name !== (by === 'distance' ? 'corners' : 'ends'));

  typedScale(): TypedScale {
    const { by, lengths } = this.state;
    const mm = (name: LengthName) => {
      const read = readLength(name, lengths[name]);
      return read && 'mm' in read ? read.mm : undefined;
    };
    return {
      by,
      length: mm('length'),
      width: mm('width'),
      height: mm('height'),
      lengthError: mm('lengthError'),
    };
  }

  measured = () => placedSection(this.state.marks.now, this.typedScale(), Number(this.state.edge));

  /** Takes new marks over; a run of nudges of one mark is undone as one. */
  change(placed: Placed, more: Partial<State> = {}, nudge?: string) {
    const { marks } = this.state;
    const goesOn = nudge !== undefined && nudge === this.nudged;
    this.nudged = nudge;
    this.setState({
      ...more,
      marks: goesOn ? { ...marks, now: placed } : changed(marks, placed),
    } as State);
    this.sayLater();
  }

  onPlace = (point: Point) => {
    const { step, marks } = this.state;
    const { placed, at } = withMark(marks.now, step, point);
    if (at < 0) {
      this.setState({ said: 'All marks of this kind are set. Drag one, or go on to the next.' });
      return;
    }
    const mark = { name: step, at };
    const full = placed[step].length >= markCounts[step].most;
    const next = full ? this.neighbor(1) : undefined;
    this.change(placed, { picked: mark, focus: mark, ...(next && { step: next }) });
  };

  onMove = (mark: MarkId, to: Point) =>
    this.change(withMovedMark(this.state.marks.now, mark.name, mark.at, to), {
      picked: mark,
      focus: { ...mark },
    });

  onNudge = (mark: MarkId, to: Point) =>
    this.change(
      withMovedMark(this.state.marks.now, mark.name, mark.at, to),
      { picked: mark },
      `${mark.name}-${mark.at}`,
    );

  onRemove = (mark: MarkId) =>
    this.change(withoutMark(this.state.marks.now, mark.name, mark.at), {
      picked: undefined,
      focus: undefined,
      step: mark.name,
    });

  onPick = (picked: MarkId | undefined) => this.setState({ picked });

  neighbor(by: 1 | -1): MarkName | undefined {
    const all = this.steps();
    return all[all.findIndex(({ name }) => name === this.state.step) + by]?.name;
  }

  goTo = (step: MarkName | undefined) => step && this.setState({ step });

  onUndo = (way: typeof undone) => {
    this.nudged = undefined;
    this.setState(({ marks }) => ({ marks: way(marks), picked: undefined, focus: undefined }));
    this.sayLater();
  };

  onScaleBy = (by: TypedScale['by']) =>
    this.setState({ by, step: by === 'distance' ? 'ends' : 'corners' });

  onLength = (name: LengthName, entry: LengthEntry) =>
    this.setState(({ lengths }) => ({ lengths: { ...lengths, [name]: entry } }));

  markSample = () => {
    const placed = { ...noMarks, ...sampleMarks } as Placed;
    this.change(placed, { by: 'distance', step: 'passes', picked: undefined });
  };

  /** Waits until the hand rests, so that nobody hears ten numbers for one move. */
  sayLater() {
    clearTimeout(this.saying);
    this.saying = setTimeout(() => {
      const measured = this.measured();
      const said =
        'missing' in measured
          ? measured.missing
          : namedReadings(measured.found)
              .filter(({ name }) => /^(legA|legB|throat|penetration)$/.test(name))
              .map((one) => `${one.label} ${printMeasured(one, one.unit, this.state.system)}`)
              .join('; ');
      this.setState({ said });
    }, 800);
  }

  override render() {
    const { picture } = this.props;
    const { marks, by, lengths, system, edge, step: stepName } = this.state;
    const placed = marks.now;
    const measured = this.measured();
    const found = 'found' in measured ? measured.found : undefined;
    const plane = placedPlane(placed, this.typedScale());
    const map = 'by' in plane ? planeMap(plane) : undefined;
    const fillet = filletMarks(placed);
    const lines = fillet && sectionLines(fillet, map);
    const readings = found ? namedReadings(found) : [];
    const all = this.steps();
    const step = all.find(({ name }) => name === stepName) ?? (all[0] as Step);
    const bar = map && scaleBar(map, picture, barLengths(system));
    const drawing: Annotated | undefined =
      found && lines
        ? { picture, address: picture.address, lines, readings, bar, system }
        : undefined;
    const lengthBox = (name: LengthName) => (
      <LengthBox
        name={name}
        entry={lengths[name]}
        system={system}
        onEntry={(entry) => this.onLength(name, entry)}
      />
    );
    return (
      <div class="section-bench">
        <h3 id="section-marking" class="screen-only" tabindex={-1}>
          Mark the section
        </h3>
        <div class="field">
          <label for="section-slice">Slice</label>
          <input
            id="section-slice"
            type="text"
            autocomplete="off"
            value={this.state.slice}
            aria-describedby="section-slice-hint"
            onInput={(event) => this.setState({ slice: event.currentTarget.value })}
          />
          <p class="field-range" id="section-slice-hint">
            Its number, for the report. The picture is {picture.name}.
          </p>
        </div>
        <ul class="print-only section-blanks">
          <li>Date</li>
          <li>Welded by</li>
          <li>Measured by</li>
          <li>Finest grit</li>
          <li>Etchant and time</li>
          <li>Checked by</li>
        </ul>
        {picture.isSample && (
          <p class="screen-only">
            <button type="button" onClick={this.markSample}>
              Mark the sample for me
            </button>
          </p>
        )}
        <div class="screen-only">
          <Choice
            id="section-scale-by"
            label="What gives the scale"
            value={by}
            choices={[
              ['distance', 'Two points of known distance'],
              ['rectangle', 'Four corners of a rectangle: squares up a tilted picture'],
            ]}
            onChoice={this.onScaleBy}
          />
          <div class="section-lengths">
            {by === 'distance' ? (
              lengthBox('length')
            ) : (
              <>
                {lengthBox('width')}
                {lengthBox('height')}
              </>
            )}
            {lengthBox('lengthError')}
          </div>
        </div>
        <div class="section-now screen-only" aria-live="polite">
          <p>
            <strong>
              Now: {step.title}
              {step.optional && ', if you can see it'}
            </strong>{' '}
            <span class="quiet">
              {placed[step.name].length} of {markCounts[step.name].least}
              {markCounts[step.name].most > markCounts[step.name].least && ' or more'}
            </span>
          </p>
          <p>{step.tell}</p>
        </div>
        <div class="screen-only">
          <PictureView
            ref={this.view}
            picture={picture}
            placed={placed}
            lines={lines}
            step={step}
            shown={all.map(({ name }) => name)}
            moving={this.state.moving}
            focus={this.state.focus}
            onPlace={this.onPlace}
            onMove={this.onMove}
            onNudge={this.onNudge}
            onRemove={this.onRemove}
            onPick={this.onPick}
          />
          <MarkingTools
            marks={marks}
            picked={this.state.picked}
            moving={this.state.moving}
            back={this.neighbor(-1)}
            next={this.neighbor(1)}
            onStep={this.goTo}
            onUndo={this.onUndo}
            onRemove={this.onRemove}
            onMoving={() => this.setState({ moving: !this.state.moving })}
            onZoom={(factor) => this.view.current?.zoom(factor)}
            onFit={() => this.view.current?.fit()}
          />
          <p class="quiet" id="section-keys">
            Keys: arrows move the picture under the cross, Shift makes small steps, + and − zoom, 0
            shows all of it, Enter sets a mark at the cross.
          </p>
          <p class="quiet" id="section-mark-keys">
            On a mark: arrows nudge it, with Shift ten times as far; Delete takes it away; Enter
            goes back to the picture.
          </p>
          <ol class="section-steps">
            {all.map((one) => (
              <li key={one.name}>
                <button
                  type="button"
                  aria-pressed={one.name === step.name}
                  onClick={() => this.goTo(one.name)}
                >
                  {isPlaced(placed, one.name) && <span aria-hidden="true">✓ </span>}
                  {one.title}
                  <span class="unseen">
                    , {placed[one.name].length} set{one.optional && ', may be left out'}
                  </span>
                </button>
              </li>
            ))}
          </ol>
        </div>
        <p class="unseen" role="status">
          {this.state.said}
        </p>
        <h3>Readings</h3>
        {'missing' in measured && <p class="section-missing">{measured.missing}</p>}
        {drawing && (
          <figure class="print-only">
            <AnnotatedPicture {...drawing} />
          </figure>
        )}
        {found && (
          <Readings
            readings={readings}
            passes={placed.passes.length}
            system={system}
            withTruth={picture.isSample}
          />
        )}
        {found && <p class="quiet">{this.basis()}</p>}
        <div class="screen-only">
          <Choice<Edge>
            id="section-edge"
            label="How sharp are the edges you mark?"
            value={edge}
            choices={[
              ['1', 'Sharp: a mark is good to 1 pixel'],
              ['2', 'Fair: good to 2 pixels'],
              ['4', 'Soft: good to 4 pixels'],
            ]}
            hint="In pixels of the picture. Set one toe five times over: half of the spread is what a mark is good to."
            onChoice={(next) => this.setState({ edge: next })}
          />
        </div>
        {this.judged(found)}
        {drawing && this.saving(drawing)}
      </div>
    );
  }

  /** What the readings rest on, in a sentence. */
  basis(): string {
    const { by, lengths, edge, system } = this.state;
    const text = (name: LengthName) => lengthText(lengths[name], system);
    const unit = unitFor('mm', system);
    const scale =
      by === 'distance'
        ? `two points ${text('length')} ${unit} apart`
        : `the corners of a rectangle of ${text('width')} by ${text('height')} ${unit}`;
    return `Scale from ${scale}, give or take ${text('lengthError')} ${unit}; each mark is good to ${edge} of the picture’s pixels. The true size lies within what is given and taken in at least 95 of 100 sections.`;
  }

  judged(found: ReturnType<typeof this.foundNow>) {
    const { lengths, system, code, cracks, unfused } = this.state;
    return (
      <>
        <h3>Against the drawing and the code</h3>
        <div class="section-lengths">
          <LengthBox
            name="size"
            entry={lengths.size}
            system={system}
            onEntry={(entry) => this.onLength('size', entry)}
          />
          <Choice
            id="section-code"
            label="Code"
            value={code}
            choices={macroCodes.map((one) => [one, one] as const)}
            onChoice={(next) => this.setState({ code: next })}
          />
          <Choice<Looked>
            id="section-cracks"
            label="Cracks"
            value={cracks}
            choices={looks}
            onChoice={(next) => this.setState({ cracks: next })}
          />
          <Choice<Looked>
            id="section-unfused"
            label="Places not fused"
            value={unfused}
            choices={looks}
            onChoice={(next) => this.setState({ unfused: next })}
          />
        </div>
        {found ? (
          <Verdicts items={this.items(found)} system={system} />
        ) : (
          <p class="quiet">The verdicts stand here once root, toes and scale are set.</p>
        )}
      </>
    );
  }

  foundNow() {
    const measured = this.measured();
    return 'found' in measured ? measured.found : undefined;
  }

  items(found: NonNullable<ReturnType<typeof this.foundNow>>) {
    const { lengths, system, code, cracks, unfused } = this.state;
    const size = readLength('size', lengths.size);
    const seen = (one: Looked): Seen => (one === 'not looked' ? undefined : one);
    return sectionItems({
      code,
      system,
      size: size && 'typed' in size ? size.typed : undefined,
      found,
      cracks: seen(cracks),
      unfused: seen(unfused),
    });
  }

  saving(drawing: Annotated) {
    const { picture } = this.props;
    const { system, marks } = this.state;
    const saver = () => import('./save-section.ts');
    const numbers = async () => {
      const found = this.foundNow();
      if (found)
        (await saver()).saveNumbers(
          drawing.readings,
          marks.now.passes.length,
          this.items(found),
          system,
        );
    };
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
}
