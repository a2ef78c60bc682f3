import { Component, createRef, type TargetedPointerEvent } from 'preact';
import type { Point } from '../../lib/geometry/outline.ts';
import type { DrawnSection } from '../../lib/section/drawn-section.ts';
import type { Placed } from '../../lib/section/section-marks.ts';
import Loupe from './Loupe.tsx';
import MarkHandles, { type MarkId } from './MarkHandles.tsx';
import type { Picture } from './picture.ts';
import SectionDrawing from './SectionDrawing.tsx';
import type { Step } from './steps.ts';
import * as window from './view-window.ts';

interface Props {
  picture: Picture;
  placed: Placed;
  drawn: DrawnSection | undefined;
  step: Step;
  /** The kinds of marks that are shown. */
  steps: readonly Step[];
  /** A finger moves the picture instead of marking. */
  moving: boolean;
  /** The mark that should have the focus after this change. */
  focus: MarkId | undefined;
  onPlace(point: Point): void;
  onMove(mark: MarkId, to: Point): void;
  onNudge(mark: MarkId, to: Point): void;
  onRemove(mark: MarkId): void;
  onPick(mark: MarkId | undefined): void;
}

/** What the hand is doing: setting a new mark, moving one, moving the picture, or pinching it. */
type Hand =
  | { does: 'mark'; at: Point; mark: MarkId | undefined; off: Point }
  | { does: 'pan'; from: Point; view: window.View }
  | { does: 'pinch'; apart: number; hold: Point; view: window.View };

interface State {
  box: window.Size;
  view: window.View;
  hand: Hand | undefined;
  /** Where the loupe looks while a mark has the focus. */
  focused: MarkId | undefined;
}

/** How near a finger must come to a mark to take hold of it, in CSS pixels. */
const reach = 22;

/** The picture with its marks: press to set one, drag to move it, two fingers to zoom. */
export default class PictureView extends Component<Props, State> {
  override state: State = {
    box: { width: 320, height: 320 },
    view: window.wholePicture(this.props.picture, { width: 320, height: 320 }),
    hand: undefined,
    focused: undefined,
  };
  frame = createRef<SVGSVGElement>();
  fingers = new Map<number, Point>();
  resized: ResizeObserver | undefined;

  override componentDidMount() {
    const frame = this.frame.current;
    if (!frame) return;
    this.resized = new ResizeObserver(() => this.fit());
    this.resized.observe(frame);
    // Preact listens passively, and the page would zoom as well.
    frame.addEventListener('wheel', this.onWheel, { passive: false });
    this.fit();
  }

  override componentWillUnmount() {
    this.resized?.disconnect();
  }

  override componentDidUpdate(before: Props) {
    const { focus, picture } = this.props;
    if (picture !== before.picture) this.fit();
    if (focus && focus !== before.focus)
      this.frame.current
        ?.querySelector<SVGElement>(`[data-mark="${focus.name}-${focus.at}"]`)
        ?.focus({ preventScroll: true });
  }

  fit() {
    const frame = this.frame.current;
    const { width = 0, height = 0 } = frame?.getBoundingClientRect() ?? {};
    if (width === 0) return;
    const box = { width, height };
    this.setState({ box, view: window.wholePicture(this.props.picture, box) });
  }

  show(view: window.View) {
    this.setState({ view: window.kept(view, this.props.picture, this.state.box) });
  }

  /** Zooms around the middle; for the buttons beside the picture. */
  zoom(factor: number) {
    const { box, view } = this.state;
    this.show(window.zoomed(view, box, [box.width / 2, box.height / 2], factor));
  }

  placeOf(event: { clientX: number; clientY: number }): Point {
    const edge = this.frame.current?.getBoundingClientRect();
    return [event.clientX - (edge?.left ?? 0), event.clientY - (edge?.top ?? 0)];
  }

  inPicture = (place: Point): Point => window.pictureAt(this.state.view, this.state.box, place);

  onWheel = (event: WheelEvent) => {
    // Without Ctrl the wheel scrolls the page; a pinch on a trackpad comes with Ctrl.
    if (!event.ctrlKey) return;
    event.preventDefault();
    const { view, box } = this.state;
    this.show(window.zoomed(view, box, this.placeOf(event), Math.exp(-event.deltaY / 200)));
  };

  onPointerDown = (event: TargetedPointerEvent<SVGSVGElement>) => {
    const place = this.placeOf(event);
    event.currentTarget.setPointerCapture(event.pointerId);
    this.fingers.set(event.pointerId, place);
    const { view } = this.state;
    if (this.fingers.size === 2) {
      const [a, b] = [...this.fingers.values()] as [Point, Point];
      const hold = this.inPicture(middle(a, b));
      this.setState({ hand: { does: 'pinch', apart: apart(a, b), hold, view } });
    } else if (this.fingers.size === 1) {
      if (this.props.moving || event.button === 1)
        this.setState({ hand: { does: 'pan', from: place, view } });
      else if (event.button === 0) this.setState({ hand: this.takeHold(place) });
    }
  };

  takeHold(place: Point): Hand {
    const { placed, steps, step } = this.props;
    const at = this.inPicture(place);
    let [mark, least]: [MarkId | undefined, number] = [undefined, reach / this.state.view.zoom];
    for (const { name } of steps)
      for (const [i, point] of placed[name].entries()) {
        // Of two marks in one place, the one that is being set is meant.
        const away = apart(point, at) * (name === step.name ? 0.8 : 1);
        if (away < least) [mark, least] = [{ name, at: i }, away];
      }
    if (!mark) return { does: 'mark', at, mark, off: [0, 0] };
    const held = placed[mark.name][mark.at] as Point;
    return { does: 'mark', at: held, mark, off: [held[0] - at[0], held[1] - at[1]] };
  }

  onPointerMove = (event: TargetedPointerEvent<SVGSVGElement>) => {
    if (!this.fingers.has(event.pointerId)) return;
    const place = this.placeOf(event);
    this.fingers.set(event.pointerId, place);
    const { hand, box } = this.state;
    if (!hand) return;
    if (hand.does === 'mark') {
      const [x, y] = this.inPicture(place);
      this.setState({ hand: { ...hand, at: this.inside([x + hand.off[0], y + hand.off[1]]) } });
    } else if (hand.does === 'pan') {
      const { middle: was, zoom } = hand.view;
      this.show({
        middle: [
          was[0] - (place[0] - hand.from[0]) / zoom,
          was[1] - (place[1] - hand.from[1]) / zoom,
        ],
        zoom,
      });
    } else if (this.fingers.size >= 2) {
      const [a, b] = [...this.fingers.values()] as [Point, Point];
      const zoom = (hand.view.zoom * apart(a, b)) / (hand.apart || 1);
      this.show(window.showing(hand.hold, middle(a, b), zoom, box));
    }
  };

  inside([x, y]: Point): Point {
    const { width, height } = this.props.picture;
    return [Math.max(0, Math.min(width, x)), Math.max(0, Math.min(height, y))];
  }

  onPointerUp = (event: TargetedPointerEvent<SVGSVGElement>) => {
    const { hand } = this.state;
    this.fingers.delete(event.pointerId);
    if (hand?.does === 'mark') {
      const at = this.inside(hand.at);
      if (!hand.mark) this.props.onPlace(at);
      else {
        const [x, y] = this.props.placed[hand.mark.name][hand.mark.at] as Point;
        if (x !== at[0] || y !== at[1]) this.props.onMove(hand.mark, at);
        else this.props.onPick(hand.mark);
      }
    }
    if (hand?.does !== 'pinch' || this.fingers.size === 0) this.setState({ hand: undefined });
  };

  onPointerCancel = (event: TargetedPointerEvent<SVGSVGElement>) => {
    this.fingers.delete(event.pointerId);
    this.setState({ hand: undefined });
  };

  onKeyDown = (event: KeyboardEvent) => {
    const { box, view } = this.state;
    const arrow = arrowOf(event.key);
    if (arrow) {
      const by = (event.shiftKey ? 4 : 40) / view.zoom;
      const [x, y] = view.middle;
      this.show({ middle: [x + arrow[0] * by, y + arrow[1] * by], zoom: view.zoom });
    } else if (event.key === '+' || event.key === '=') this.zoom(1.5);
    else if (event.key === '-') this.zoom(1 / 1.5);
    else if (event.key === '0') this.show(window.wholePicture(this.props.picture, box));
    else if (event.key === 'Enter' || event.key === ' ') this.props.onPlace(view.middle);
    else return;
    event.preventDefault();
  };

  onMarkKey = (event: KeyboardEvent, mark: MarkId) => {
    event.stopPropagation();
    const arrow = arrowOf(event.key);
    const [x, y] = this.props.placed[mark.name][mark.at] as Point;
    if (arrow) {
      const by = (event.shiftKey ? 10 : 1) / this.state.view.zoom;
      this.props.onNudge(mark, this.inside([x + arrow[0] * by, y + arrow[1] * by]));
    } else if (event.key === 'Delete' || event.key === 'Backspace') {
      this.props.onRemove(mark);
      this.frame.current?.focus({ preventScroll: true });
    } else if (event.key === 'Enter' || event.key === 'Escape') {
      this.frame.current?.focus({ preventScroll: true });
    } else return;
    event.preventDefault();
  };

  override render() {
    const { picture, placed, drawn, step, steps } = this.props;
    const { view, box, hand, focused } = this.state;
    const held = hand?.does === 'mark' ? hand : undefined;
    const lookedAt = held?.at ?? (focused && placed[focused.name][focused.at]);
    const [x, y] = view.middle;
    return (
      <div class="section-view">
        <svg
          ref={this.frame}
          class={this.props.moving ? 'section-frame moving' : 'section-frame'}
          viewBox={window.viewBox(view, box)}
          role="application"
          tabindex={0}
          aria-label={`Picture of the section. Next to set: ${step.title}`}
          aria-describedby="section-keys"
          onPointerDown={this.onPointerDown}
          onPointerMove={this.onPointerMove}
          onPointerUp={this.onPointerUp}
          onPointerCancel={this.onPointerCancel}
          onKeyDown={this.onKeyDown}
        >
          <image href={picture.address} width={picture.width} height={picture.height} />
          {drawn && <SectionDrawing drawn={drawn} unit={1 / view.zoom} />}
          <MarkHandles
            placed={placed}
            steps={steps}
            current={step.name}
            unit={1 / view.zoom}
            held={held}
            onKey={this.onMarkKey}
            onFocus={(mark) => {
              this.setState({ focused: mark });
              if (mark) this.props.onPick(mark);
            }}
          />
          <path
            class="section-aim"
            d={`M${x - 16 / view.zoom} ${y}h${32 / view.zoom}M${x} ${y - 16 / view.zoom}v${32 / view.zoom}`}
          />
        </svg>
        {lookedAt && <Loupe picture={picture} at={lookedAt} view={view} box={box} />}
      </div>
    );
  }
}

const apart = ([ax, ay]: Point, [bx, by]: Point) => Math.hypot(ax - bx, ay - by);
const middle = ([ax, ay]: Point, [bx, by]: Point): Point => [(ax + bx) / 2, (ay + by) / 2];

const arrows: Readonly<Record<string, Point>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};
const arrowOf = (key: string): Point | undefined => arrows[key];
