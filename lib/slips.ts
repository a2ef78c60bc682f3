/**
 * Which slip fits a wrong number. Each is a factor that a usual mistake leaves behind, with the
 * sentence that helps.
 */
interface Slip {
  factor: number;
  text: string;
}

const slips: readonly Slip[] = [
  { factor: 25.4, text: 'That is 25.4 times too much: inches and millimeters were mixed.' },
  { factor: 1 / 25.4, text: 'That is 25.4 times too little: inches and millimeters were mixed.' },
  { factor: 10, text: 'That is ten times too much: look at the decimal point.' },
  { factor: 1 / 10, text: 'That is ten times too little: look at the decimal point.' },
  { factor: 1000, text: 'That is a thousand times too much: kilo got lost.' },
  { factor: 1 / 1000, text: 'That is a thousand times too little: kilo got lost.' },
  { factor: 60, text: 'That is sixty times too much: seconds and minutes were mixed.' },
  { factor: 1 / 60, text: 'That is sixty times too little: seconds and minutes were mixed.' },
  {
    factor: Math.SQRT2,
    text: 'That would be the leg where the throat is asked, or the other way round: they differ by the root of two.',
  },
  {
    factor: Math.SQRT1_2,
    text: 'That would be the throat where the leg is asked, or the other way round: they differ by the root of two.',
  },
  { factor: 2, text: 'That is twice too much: a diameter for a radius, or both sides for one.' },
  { factor: 1 / 2, text: 'That is half: a radius for a diameter, or one side for two.' },
  { factor: 1 / 0.8, text: 'That leaves the arc efficiency out: the metal keeps 0.8 of it.' },
  { factor: 0.8, text: 'That has the arc efficiency in it, and here it does not belong.' },
];

/** Two parts in a hundred: a ruler, a watch and rounding in between. */
export const tolerance = 0.02;

export type Judged = { right: true } | { right: false; text: string };

/** Judges a number against the computed one. */
export function judge(typed: number, computed: number): Judged {
  const ratio = typed / computed;
  if (Math.abs(ratio - 1) <= tolerance + 1e-9) return { right: true };
  const slip = slips.find(({ factor }) => Math.abs(ratio / factor - 1) <= tolerance / 2);
  if (slip) return { right: false, text: slip.text };
  if (Math.abs(ratio - 1) <= 0.1)
    return { right: false, text: 'Close: carry more digits and round only at the end.' };
  if (typed < 0 !== computed < 0) return { right: false, text: 'The sign is the other way round.' };
  return {
    right: false,
    text:
      ratio > 1
        ? 'Too much. Look at the hint and go step by step.'
        : 'Too little. Look at the hint and go step by step.',
  };
}
