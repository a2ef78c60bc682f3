import { Component, createRef } from 'preact';
import type { Point } from '../../lib/geometry/outline.ts';
import { type PicturePlane, planeMap } from '../../lib/section/picture-plane.ts';
import { placedPlane } from '../../lib/section/placed-plane.ts';
import { scaleBar } from '../../lib/section/scale-bar.ts';
import {
  type MarkName,
  markCounts,
  type Placed,
  withMark,
  withMovedMark,
  withoutMark,
} from '../../lib/section/section-marks.ts';
import { changed, type undone } from '../../lib/undo.ts';
import type { System } from '../../lib/units.ts';
import { currentSystem } from '../Calculator/already-there.ts';
import { barLengths } from './AnnotatedPicture.tsx';
import {
  countedPasses,
  firstOpen,
  isOnStrip,
  kindOf,
  measure,
  neighbor,
  opening,
  spoken,
  stepsOf,
  typedScale,
  type Worked,
} from './bench-state.ts';
import Choice from './Choice.tsx';
import { kinds } from './kinds.ts';
import type { MarkId } from './MarkHandles.tsx';
import MarkingTools from './MarkingTools.tsx';
import PictureView from './PictureView.tsx';
import type { Picture } from './picture.ts';
import Report from './Report.tsx';
import { PassesBox, SliceHead } from './ReportFields.tsx';
import ScaleFields from './ScaleFields.tsx';
import StepList, { StepNow } from './StepList.tsx';
import type { Squared } from './square-picture.ts';
import { shown, squaredKey } from './squared-view.ts';
import type { Step } from './steps.ts';

interface Props {
  picture: Picture;
  /** What was on the bench before a reload. */
  worked: Worked | undefined;
  /** A sentence on what is kept, and what is not. */
  kept: string;
  onKeep(worked: Worked): void;
  onPutAway(): void;
}

interface State {
  worked: Worked;
  step: MarkName;
  moving: boolean;
  picked: MarkId | undefined;
  focus: MarkId | undefined;
  /** What a screen reader says once the hand rests. */
  said: string;
  system: System;
  /** Whether a picture whose four corners are set is shown squared up. */
  squaring: boolean;
  squared: (Squared & { key: string }) | undefined;
}

/** The picture, what is marked on it, what that measures and how it is judged. */
export default class Bench extends Component<Props, State> {
  override state: State = {
    worked: this.props.worked ?? opening(this.props.picture, currentSystem()),
    step: this.props.worked ? firstOpen(this.props.worked) : 'ends',
    moving: false,
    picked: undefined,
    focus: undefined,
    said: '',
    system: currentSystem(),
    squaring: true,
    squared: undefined,
  };
  view = createRef<PictureView>();
  saying: ReturnType<typeof setTimeout> | undefined;
  nudged: string | undefined;
  /** The squared-up picture that is being made. */
  making: string | undefined;

  override componentDidMount() {
    addEventListener('units', this.onUnits);
    this.squareUp();
  }

  override componentWillUnmount() {
    removeEventListener('units', this.onUnits);
    clearTimeout(this.saying);
    if (this.state.squared) URL.revokeObjectURL(this.state.squared.picture.address);
  }

  override componentDidUpdate(_: Props, before: State) {
    if (this.state.worked !== before.worked) this.props.onKeep(this.state.worked);
    if (before.squared && before.squared !== this.state.squared)
      URL.revokeObjectURL(before.squared.picture.address);
    this.squareUp();
  }

  onUnits = () => this.setState({ system: currentSystem() });

  work = (change: Partial<Worked>, more: Partial<State> = {}) =>
    this.setState(({ worked }) => ({ ...more, worked: { ...worked, ...change } }) as State);

  plane(): PicturePlane | undefined {
    const { worked } = this.state;
    const plane = placedPlane(worked.marks.now, typedScale(worked));
    return 'by' in plane ? plane : undefined;
  }

  /** The key of the squared-up picture that should be shown; none while the corners are being set. */
  wanted(plane: PicturePlane | undefined): string | undefined {
    const { squaring, step } = this.state;
    return squaring && step !== 'corners' && plane ? squaredKey(plane) : undefined;
  }

  async squareUp() {
    const plane = this.plane();
    const key = this.wanted(plane);
    const map = plane && planeMap(plane);
    if (!key || !map || plane.by !== 'rectangle' || key === this.state.squared?.key) return;
    if (key === this.making) return;
    this.making = key;
    const { squarePicture } = await import('./square-picture.ts');
    const squared = await squarePicture(this.props.picture, map, plane).catch(() => undefined);
    if (this.making === key && squared) this.setState({ squared: { ...squared, key } });
  }

  /** Takes new marks over; a run of nudges of one mark is undone as one. */
  change(placed: Placed, more: Partial<State> = {}, nudge?: string) {
    const { marks } = this.state.worked;
    const goesOn = nudge !== undefined && nudge === this.nudged;
    this.nudged = nudge;
    this.work({ marks: goesOn ? { ...marks, now: placed } : changed(marks, placed) }, more);
    this.sayLater();
  }

  placed = () => this.state.worked.marks.now;

  onPlace = (point: Point) => {
    const { step, worked } = this.state;
    const { placed, at } = withMark(this.placed(), step, point);
    if (at < 0) {
      this.setState({ said: 'All marks of this kind are set. Drag one, or go on to the next.' });
      return;
    }
    const mark = { name: step, at };
    const full = placed[step].length >= markCounts[step].most;
    const next = full ? neighbor(worked, step, 1) : undefined;
    this.change(placed, { picked: mark, focus: mark, ...(next && { step: next }) });
  };

  onMove = (mark: MarkId, to: Point) =>
    this.change(withMovedMark(this.placed(), mark.name, mark.at, to), {
      picked: mark,
      focus: { ...mark },
    });

  onNudge = (mark: MarkId, to: Point) =>
    this.change(
      withMovedMark(this.placed(), mark.name, mark.at, to),
      { picked: mark },
      `${mark.name}-${mark.at}`,
    );

  onRemove = (mark: MarkId) =>
    this.change(withoutMark(this.placed(), mark.name, mark.at), {
      picked: undefined,
      focus: undefined,
      step: mark.name,
    });

  goTo = (step: MarkName | undefined) => step && this.setState({ step });

  onUndo = (way: typeof undone) => {
    this.nudged = undefined;
    this.work({ marks: way(this.state.worked.marks) }, { picked: undefined, focus: undefined });
    this.sayLater();
  };

  onScaleBy = (by: Worked['by']) =>
    this.work({ by }, { step: by === 'distance' ? 'ends' : 'corners' });

  onWeld = (weld: Worked['weld']) => {
    const { worked, step } = this.state;
    const steps = stepsOf({ ...worked, weld });
    const stays = steps.some(({ name }) => name === step);
    this.work({ weld }, { picked: undefined, ...(!stays && { step: (steps[0] as Step).name }) });
  };

  markSample = () => {
    const { sample } = this.props.picture;
    if (!sample) return;
    const { worked } = this.state;
    const marks = changed(worked.marks, kinds[sample].sample.marks);
    this.nudged = undefined;
    this.work(
      { marks, weld: sample, root: 'open root', by: 'distance' },
      { step: 'passes', picked: undefined },
    );
    this.sayLater();
  };

  /** Waits until the hand rests, so that nobody hears ten numbers for one move. */
  sayLater() {
    clearTimeout(this.saying);
    this.saying = setTimeout(() => {
      const { worked, system } = this.state;
      const said = spoken(worked, system);
      this.setState({ said });
    }, 800);
  }

  override render() {
    const { picture } = this.props;
    const { worked, system, step: stepName } = this.state;
    const placed = this.placed();
    const measured = measure(worked);
    const plane = this.plane();
    const map = plane && planeMap(plane);
    const drawn = kindOf(worked).draw(placed, map, isOnStrip(worked));
    const key = this.wanted(plane);
    const squared = key && this.state.squared?.key === key ? this.state.squared : undefined;
    const seen = shown(picture, placed, drawn, map, squared);
    const steps = stepsOf(worked);
    const step = steps.find(({ name }) => name === stepName) ?? (steps[0] as Step);
    const counted = countedPasses(worked);
    return (
      <div class="section-bench">
        <h3 id="section-marking" class="screen-only" tabindex={-1}>
          Mark the section
        </h3>
        <SliceHead
          picture={picture}
          slice={worked.slice}
          kept={this.props.kept}
          onSlice={(slice) => this.work({ slice })}
          onPutAway={this.props.onPutAway}
          onMarkSample={picture.sample && this.markSample}
        />
        <div class="screen-only">
          {this.weldChoice()}
          <ScaleFields
            worked={worked}
            system={system}
            onScaleBy={this.onScaleBy}
            onLength={(name, entry) => this.work({ lengths: { ...worked.lengths, [name]: entry } })}
          />
        </div>
        <StepNow step={step} placed={placed} />
        <div class="screen-only">
          <PictureView
            ref={this.view}
            picture={seen.picture}
            placed={seen.placed}
            drawn={seen.drawn}
            step={step}
            steps={steps}
            moving={this.state.moving}
            focus={this.state.focus}
            onPlace={(point) => this.onPlace(seen.back(point))}
            onMove={(mark, to) => this.onMove(mark, seen.back(to))}
            onNudge={(mark, to) => this.onNudge(mark, seen.back(to))}
            onRemove={this.onRemove}
            onPick={(picked) => this.setState({ picked })}
          />
          <MarkingTools
            marks={worked.marks}
            picked={this.state.picked}
            moving={this.state.moving}
            back={neighbor(worked, step.name, -1)}
            next={neighbor(worked, step.name, 1)}
            squaring={plane?.by === 'rectangle' ? this.state.squaring : undefined}
            onSquaring={() => this.setState({ squaring: !this.state.squaring })}
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
          <StepList steps={steps} now={step.name} placed={placed} onStep={this.goTo} />
          <PassesBox
            text={worked.passes}
            marked={placed.passes.length}
            problem={'problem' in counted ? counted.problem : ''}
            onText={(text) => this.work({ passes: text })}
          />
        </div>
        <p class="unseen" role="status">
          {this.state.said}
        </p>
        <Report
          worked={worked}
          system={system}
          measured={measured}
          picture={seen.picture}
          drawn={seen.drawn}
          bar={seen.map && scaleBar(seen.map, seen.picture, barLengths(system))}
          passes={'count' in counted ? counted.count : 0}
          onChange={this.work}
        />
      </div>
    );
  }

  weldChoice() {
    const { weld, root } = this.state.worked;
    return (
      <div class="section-lengths">
        <Choice<Worked['weld']>
          id="section-weld"
          label="Weld"
          value={weld}
          choices={[
            ['fillet', 'Fillet'],
            ['groove', 'Groove'],
          ]}
          onChoice={this.onWeld}
        />
        {weld === 'groove' && (
          <Choice<Worked['root']>
            id="section-root"
            label="Root"
            value={root}
            choices={[
              ['open root', 'Open root'],
              ['backing strip', 'On a backing strip'],
            ]}
            onChoice={(next) => this.work({ root: next })}
          />
        )}
      </div>
    );
  }
}
