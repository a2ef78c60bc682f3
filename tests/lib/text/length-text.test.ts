import { expect, test } from 'vitest';
import { lengthText } from '../../../lib/text/length-text.ts';
import { speak } from '../../../lib/text/say.ts';

test('a length off every rule is printed in both systems', () => {
  expect(lengthText(200 / 25.4)).toBe('{7.87 in|200 mm}');
  expect(lengthText(0.1)).toBe('{0.1 in|2.5 mm}');
});

test('a length on a rule keeps its fraction, and any other is printed in both systems', () => {
  expect(lengthText(7.0625)).toBe('{7-1/16 in}');
  expect(speak(lengthText(200 / 25.4), 'us')).toBe('7.87\u00a0in');
  expect(speak(lengthText(200 / 25.4), 'metric')).toBe('200\u00a0mm');
});
