import { say } from '#shared-core';
import { Button } from '../design/index.ts';
import { useBench } from '../parts/index.ts';
import './rehearsed-receiver.css';

/**
 * In a rehearsal, what its simulated receiver shows: there is no other to read. In a few seconds of typing minutes of a fast one pass, so
 * one press marks what it shows at that moment.
 */
export function RehearsedReceiver({ onRead }: { readonly onRead: (volumeMl: number) => void }) {
  const volumeMl = useBench(({ probe }) => probe?.rehearsedReceiverMl);
  if (volumeMl === undefined) return null;
  const values = { volume: volumeMl.toFixed(1) };
  return (
    <div className="rehearsed-receiver">
      <p>{say('The simulated receiver shows {volume} mL, and fills on.', values)}</p>
      <Button onClick={() => onRead(volumeMl)}>{say('Mark what it shows now')}</Button>
    </div>
  );
}
