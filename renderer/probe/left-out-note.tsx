import type { ProbeStatus } from '#shared-core';
import { useWords } from '../words/index.ts';

/** Readings that found no room in a flood: what is missing from the record must not be a secret. */
export function LeftOutNote({ probe }: { readonly probe: ProbeStatus | null }) {
  const words = useWords();
  const { droppedReadings = 0, thinnedHeadReadings = 0 } = probe ?? {};
  if (droppedReadings === 0 && thinnedHeadReadings === 0) return null;
  const counts = [
    ...(thinnedHeadReadings > 0 ? [`${words.count(thinnedHeadReadings)} of the head`] : []),
    ...(droppedReadings > 0 ? [`${words.count(droppedReadings)} of other channels`] : []),
  ];
  return (
    <div className="left-out small">
      {/* Said once; the count goes on without being read out. */}
      <p role="status">
        <strong>More readings arrive than can be taken.</strong> Let the probe send less often.
      </p>
      <p className="number">Left out so far: {counts.join(', ')}.</p>
    </div>
  );
}
