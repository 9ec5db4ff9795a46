import { type ProbeStatus, say } from '#shared-core';
import { Say, useWords } from '../words/index.ts';

/** Readings that found no room in a flood: what is missing from the record must not be a secret. */
export function LeftOutNote({ probe }: { readonly probe: ProbeStatus | null }) {
  const words = useWords();
  const { droppedReadings = 0, thinnedHeadReadings = 0 } = probe ?? {};
  if (droppedReadings === 0 && thinnedHeadReadings === 0) return null;
  const counts = [
    ...(thinnedHeadReadings > 0
      ? [
          say('{thinnedHeadReadings} of the head', {
            thinnedHeadReadings: words.count(thinnedHeadReadings),
          }),
        ]
      : []),
    ...(droppedReadings > 0
      ? [
          say('{droppedReadings} of other channels', {
            droppedReadings: words.count(droppedReadings),
          }),
        ]
      : []),
  ];
  return (
    <div className="left-out small">
      {/* Said once; the count goes on without being read out. */}
      <p role="status">
        <Say
          sentence={
            '<strong>More readings arrive than can be taken.</strong> Let the probe send less often.'
          }
          parts={{ strong: (words) => <strong>{words}</strong> }}
        />
      </p>
      <p className="number">{say('Left out so far: {counts}.', { counts: counts.join(', ') })}</p>
    </div>
  );
}
