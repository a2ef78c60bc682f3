import { describe, expect, it } from 'vitest';
import { answer } from '../../../lib/answer.ts';
import rootFitUp from '../../../lib/calculations/root-fit-up.ts';

function said(diameter: string, rootOpening: string, rootFace: string) {
  const answered = answer(rootFitUp, { diameter, rootOpening, rootFace, length: '7 in' });
  if (!answered.ok) throw new Error(answered.problems[0]?.text);
  return answered.because.map(({ text }) => text).join(' ');
}

describe('root-fit-up', () => {
  // Common practice: 3/32 to 1/8 in opening and 1/16 to 3/32 in face for a 1/8 in electrode.
  it.each([
    ['1/8 in', '1/8 in', '1/16 in'],
    ['1/8 in', '3/32 in', '3/32 in'],
    ['3/32 in', '3/32 in', '1/16 in'],
  ])('is content with %s, opening %s, face %s', (...sizes) => {
    expect(said(...sizes)).toMatch(/The opening suits .* The face suits/);
  });
  it.each([
    ['1/8 in', '1/16 in', '1/16 in', 'Too tight'],
    ['1/8 in', '5/32 in', '1/16 in', 'Wide'],
    ['1/8 in', '1/8 in', '1/32 in', 'Thin'],
    ['1/8 in', '1/8 in', '1/8 in', 'Thick'],
    ['3/32 in', '1/8 in', '1/16 in', 'Wide'],
  ])('judges %s, opening %s, face %s: %s', (diameter, opening, face, word) => {
    expect(said(diameter, opening, face)).toContain(word);
  });

  it('says what is usual for the electrode: three quarters to all of it, half to three quarters', () => {
    expect(said('1/8 in', '1/8 in', '1/16 in')).toMatch(
      /opening \{1\/8 in\}; .*\{3\/32 in\} to \{1\/8 in\}\. .*face \{1\/16 in\}; .*\{1\/16 in\} to \{3\/32 in\}\./,
    );
    // 3/4 of 3/32 in is 0.0703 in, half of it 3/64 in: off the rule in thousandths.
    expect(said('3/32 in', '3/32 in', '1/16 in')).toMatch(
      /\{0\.07 in\} to \{3\/32 in\}\. .*\{3\/64 in\} to \{0\.07 in\}\./,
    );
  });
});
