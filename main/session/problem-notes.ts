import type { Result, ServiceProblem } from '#shared-core';
import type { ProbeHub } from '../probe/index.ts';
import { type ProblemLog, problemInShort } from '../problem-report/index.ts';
import type { EventHub } from './event-hub.ts';

/** Notes what goes wrong where it passes by; the returned functions end it. */
export function noteProblems(
  log: ProblemLog,
  events: EventHub,
  probeHub: ProbeHub,
): readonly (() => void)[] {
  /** What stands for a while is told many times, and noted once. */
  const whenNew = () => {
    let last: string | null = null;
    return (said: string | null) => {
      if (said !== null && said !== last) log.note(said);
      last = said;
    };
  };
  const [ofProbe, ofRecording, ofAdvice, ofLost] = [whenNew(), whenNew(), whenNew(), whenNew()];
  return [
    events.on('probe', ({ problem }) => ofProbe(problem && `probe: ${problemInShort(problem)}`)),
    events.on('recording', ({ problem, adviceStopped, lostReadings }) => {
      ofRecording(problem && `recording: ${problemInShort(problem)}`);
      ofAdvice(adviceStopped === undefined ? null : `advice stopped: ${adviceStopped}`);
      ofLost(lostReadings === undefined ? null : 'recording: readings found no room and are lost');
    }),
    probeHub.on('link', ({ state, reason }) => log.note(`link ${state}: ${reason}`)),
  ];
}

/** Notes a request that was refused, unless it was the asker's fault alone. */
export function noteRefusal(
  log: ProblemLog,
  name: string,
  result: Result<unknown, ServiceProblem>,
): void {
  if (result.ok || result.error.kind === 'viewer-may-not-command') return;
  log.note(`${name.slice(0, 80)}: ${problemInShort(result.error)}`);
}
