import { Component } from 'preact';

interface Props {
  label: string;
  min: number;
  max: number;
  step: number;
  value: number;
  /** What the value means, to read beside the handle and to hear. */
  says: string;
  onMove: (value: number, handle: HTMLElement) => void;
}

/**
 * A slider under a drawing, for touch, mouse and arrow keys. Built pages hold its empty place; it
 * fills when the form comes to life, where a style sheet has kept room for it, so nothing below it
 * moves.
 */
export default class Handle extends Component<Props, { live?: true }> {
  override componentDidMount() {
    if ((this.base as HTMLElement).offsetHeight > 0) this.setState({ live: true });
  }

  override render({ label, says, onMove, ...range }: Props, { live }: { live?: true }) {
    if (!live) return <div class="handle" />;
    return (
      <label class="handle">
        {label}
        <b>{says}</b>
        <input
          type="range"
          {...range}
          aria-valuetext={says}
          onInput={({ currentTarget }) => onMove(currentTarget.valueAsNumber, currentTarget)}
        />
      </label>
    );
  }
}

/** Types a number into a field of the form around the handle: what is typed stays the truth. */
export function typeInto(field: string, value: number, handle: Element): void {
  const box = handle.closest('form')?.querySelector<HTMLInputElement>(`[id$="-${field}"]`);
  if (!box) return;
  box.value = String(value);
  box.dispatchEvent(new Event('input', { bubbles: true }));
}
