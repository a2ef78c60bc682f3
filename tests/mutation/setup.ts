import fc from 'fast-check';
import { inject } from 'vitest';
import { theSwitch } from './switch.ts';

declare module 'vitest' {
  interface ProvidedContext {
    /** The change that is on from the start, if any. */
    change: string | undefined;
  }
}

// A red property need not look for its smallest case here.
fc.configureGlobal({ endOnFailure: true });

theSwitch.on = inject('change');
theSwitch.most = 20_000_000;
