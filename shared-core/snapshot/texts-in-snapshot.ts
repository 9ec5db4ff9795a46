import type { Snapshot } from './snapshot.ts';

/**
 * Every text for people in a snapshot, in no order that matters.
 *
 * @param snapshot of any moment
 *
 * Source: this project's own form of a snapshot.
 * @example
 * const monitor = createMonitor(defaultRunSettings);
 * textsInSnapshot(monitor.snapshot())[0] // => "Waiting for the first reading of the head."
 */
export function textsInSnapshot(snapshot: Snapshot): readonly string[] {
  const { sentence, act, stage, vapour, forecast, alarms, events, channelProblems } = snapshot;
  const texts = [
    sentence,
    act,
    stage.because,
    stage.wouldChangeIf,
    vapour?.explanation,
    forecast?.wouldHelp,
    forecast?.doubt,
    ...alarms.flatMap((alarm) => [
      alarm.act,
      alarm.because,
      alarm.consequence,
      alarm.wouldChangeIf,
    ]),
    ...events.map(({ because }) => because),
    ...channelProblems.map(({ problem }) => problem),
  ];
  return texts.filter((text) => text !== undefined && text !== null);
}
