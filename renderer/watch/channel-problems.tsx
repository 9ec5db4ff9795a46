import { type Snapshot, told } from '#shared-core';

/** Channels beside the head that are not heard, or say otherwise than what is reckoned by; the head's own troubles are prompts. */
export function ChannelProblems({ snapshot }: { readonly snapshot: Snapshot | null }) {
  if (snapshot === null || snapshot.channelProblems.length === 0) return null;
  return (
    <div className="left-out small" role="status">
      {snapshot.channelProblems.map(({ problem, fromS }) => (
        <p key={`${fromS} ${problem}`}>{told(problem)}</p>
      ))}
    </div>
  );
}
