import { describe, expect, it } from 'vitest';
import { speak, speakBoth, stated } from '../../../lib/text/say.ts';

describe('speak', () => {
  it('shows a quantity in the reader’s units, as written in its own', () => {
    expect(speak('Over {3/8 in} thick.', 'us')).toBe('Over 3/8\u00a0in thick.');
    expect(speak('Over {3/8 in} thick.', 'metric')).toBe('Over 9.5\u00a0mm thick.');
  });

  it('shows what a source prints in each system, whichever comes first', () => {
    expect(stated('3/4 in|20 mm')).toEqual({ us: '3/4\u00a0in', metric: '20\u00a0mm' });
    expect(stated('20 mm|3/4 in')).toEqual({ us: '3/4\u00a0in', metric: '20\u00a0mm' });
  });

  it('leaves units of both systems and plain numbers alone', () => {
    expect(stated('125 A')).toEqual({ us: '125\u00a0A', metric: '125\u00a0A' });
    expect(stated('2')).toEqual({ us: '2', metric: '2' });
  });

  it('keeps text without quantities whole', () => {
    expect(speakBoth('Nothing to see.')).toEqual(['Nothing to see.']);
  });

  it('makes no empty pieces at the ends or between quantities', () => {
    const [inch, amps] = [stated('1 in'), stated('90 A')];
    expect(speakBoth('{1 in}')).toEqual([inch]);
    expect(speakBoth('{1 in}{90 A} or so')).toEqual([inch, amps, ' or so']);
    expect(speakBoth('at {90 A}')).toEqual(['at ', amps]);
  });

  it('puts degrees of angle close, and temperatures apart', () => {
    expect(speak('{45 deg} at {50 degF}', 'us')).toBe('45° at 50\u00a0°F');
    expect(speak('{50 degF}', 'metric')).toBe('10\u00a0°C');
  });

  it.each(['{many}', '{2 in|3 A}', '{3 A|2 in}', '{3 parsec}', '{3/0 in}', '{1 in|2 in}'])(
    'refuses %s',
    (text) => {
      expect(() => speakBoth(text)).toThrow(TypeError);
    },
  );
});
