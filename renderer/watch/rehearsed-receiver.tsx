import { say } from '#shared-core';
import { Button } from '../design/index.ts';
import { useBench } from '../parts/index.ts';
import { useWords } from '../words/index.ts';
import './rehearsed-receiver.css';

/**
 * In a rehearsal, what its simulated receiver shows: there is no other to read. In a few seconds of typing minutes of a fast one pass, so
 * one press marks what it shows at that moment.
 */
export function RehearsedReceiver({ onRead }: { readonly onRead: (volumeMl: number) => void }) {
  const volumeMl = useBench(({ probe }) => probe?.rehearsedReceiverMl);
  const words = useWords();
  if (volumeMl === undefined) return null;
  const volume = words.quantity(volumeMl, 1, 'mL');
  return (
    <div className="rehearsed-receiver">
      <p>{say('The simulated receiver shows {volume}, and fills on.', { volume })}</p>
      <Button onClick={() => onRead(volumeMl)}>{say('Mark what it shows now')}</Button>
    </div>
  );
}
