import Label from '../Sketch/Label.tsx';
import Sketch from '../Sketch/Sketch.tsx';

/** A tack or a stop along the root, in section: what the next bead meets at a thick end and at a thin one. */
export default function FeatheredEnd() {
  return (
    <Sketch
      height={126}
      name="A thick end and a feathered end of a tack, along the root, each with the next bead"
      caption={
        <>
          Cut along the root; the far side is below. Shaded: tack or stop. Open: the next bead.
          Common practice.
        </>
      }
    >
      <path d="M4 26H74V76H4Z" class="weld-metal" stroke="currentColor" stroke-width="1.4" />
      <path
        d="M150 26H74V36Q84 54 94 76H150"
        fill="none"
        stroke="currentColor"
        stroke-width="1.4"
      />
      <path d="M74 36Q84 54 94 76H74Z" fill="currentColor" />
      <path
        d="M170 26H196L250 76H170Z"
        class="weld-metal"
        stroke="currentColor"
        stroke-width="1.4"
      />
      <path d="M316 26H196M250 76H316" fill="none" stroke="currentColor" stroke-width="1.4" />
      <path
        d="M112 50H136M119 45l-7 5l7 5M268 50H292M275 45l-7 5l7 5"
        fill="none"
        stroke="currentColor"
        stroke-width="1.8"
      />
      <Label x={77} y={98} bold>
        left thick
      </Label>
      <Label x={77} y={116}>
        a pit inside
      </Label>
      <Label x={243} y={98} bold>
        thin as a blade
      </Label>
      <Label x={243} y={116}>
        it melts in
      </Label>
    </Sketch>
  );
}
