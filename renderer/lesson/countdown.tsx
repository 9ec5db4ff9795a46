import { type Snapshot, say } from '#shared-core';
import { expectedEnd } from '../strip/index.ts';
import { untilWords } from '../words/index.ts';
import { isCountable } from './expected-time.ts';

/** For the class: how long until the heat goes off, once that is known to some minutes. */
export function Countdown({ snapshot }: { readonly snapshot: Snapshot | null }) {
  const end = expectedEnd(snapshot);
  if (snapshot === null || end === null) return null;
  const ahead = { low: end.low - snapshot.timeS, high: end.high - snapshot.timeS };
  if (!isCountable(ahead)) return null;
  return (
    <p className="countdown number">{say('Heat off {ahead}', { ahead: untilWords(ahead) })}</p>
  );
}
