import { speakBoth } from '../../lib/text/say.ts';
import Both from '../Units/Both.tsx';

/** A sentence whose quantities follow the reader's units. */
export default function Said({ text }: { text: string }) {
  return (
    <>{speakBoth(text).map((piece) => (typeof piece === 'string' ? piece : <Both {...piece} />))}</>
  );
}
