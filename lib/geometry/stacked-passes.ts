/**
 * Layers upon layers of beads, numbered in the order they are laid.
 */
import { type Bead, type Layer, layerBeads } from './layer-beads.ts';

export interface StackedPass {
  number: number;
  /** From the root, from 1. */
  layer: number;
  bead: Bead;
  /** The earlier pass that it laps over, and how much of that one's open face it covers. */
  over?: { number: number; share: number };
}

/** `layers` from the root up, each with the number of beads it holds. */
export function stackedPasses(layers: readonly (Layer & { beads: number })[]): StackedPass[] {
  const passes: StackedPass[] = [];
  let under: StackedPass | undefined;
  for (const [index, layer] of layers.entries()) {
    const laid = passes.length;
    for (const bead of layerBeads(layer, layer.beads)) {
      const before = passes.length > laid ? passes.at(-1) : undefined;
      const over = before ? overNeighbor(before) : under && overLayer(under, bead);
      passes.push({
        number: passes.length + 1,
        layer: index + 1,
        bead,
        ...(over && { over }),
      });
    }
    under = passes[laid];
  }
  return passes;
}

/** Within a layer a bead covers the flank of the one before. */
function overNeighbor({ number, bead }: StackedPass) {
  const open = bead.top[1] - bead.top[0];
  return { number, share: bead.flank / (bead.flank + open) };
}

/** The first bead of a layer covers the first of the layer below, which its own layer left open. */
function overLayer({ number, bead: { top } }: StackedPass, { foot }: Bead) {
  return { number, share: (Math.min(top[1], foot[1]) - top[0]) / (top[1] - top[0]) };
}
