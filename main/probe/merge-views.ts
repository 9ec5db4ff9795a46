import { asGiven, type ProbeStatus, worded } from '#shared-core';
import type { ProbeLinkView } from './link/probe-link.ts';

/** What a person must know first when several probes are in different states. */
const worstFirst: readonly ProbeStatus['state'][] = [
  'lost',
  'silent',
  'unreadable',
  'starting',
  'connecting',
  'hearing',
  'none',
];

/** One status for several probes: the worst state, every channel, advice with the port it is about. */
export function mergeViews(views: readonly ProbeLinkView[]): ProbeLinkView {
  const [first] = views;
  if (first === undefined) throw new Error('A group without probes has no view.');
  if (views.length === 1) return first;
  const worst = worstFirst.find((state) => views.some((view) => view.state === state)) ?? 'none';
  const about = views.find((view) => view.state === worst) ?? first;
  const sum = (count: (view: ProbeLinkView) => number) =>
    views.reduce((total, view) => total + count(view), 0);
  return {
    ...about,
    path: views.map(({ path }) => path).join(', '),
    channels: views.flatMap(({ channels }) => channels),
    latest: views.flatMap(({ latest }) => latest),
    readingsPerS: sum(({ readingsPerS }) => readingsPerS),
    rejectedLines: sum(({ rejectedLines }) => rejectedLines),
    droppedBytes: sum(({ droppedBytes }) => droppedBytes),
    problem: views.find(({ problem }) => problem !== null)?.problem ?? null,
    advice:
      about.advice === null
        ? null
        : worded('{path}: {advice}', { path: asGiven(about.path ?? ''), advice: about.advice }),
  };
}
