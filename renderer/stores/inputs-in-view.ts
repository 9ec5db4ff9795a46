import {
  appendToSeries,
  emptySeries,
  type Mark,
  pointsGoingOn,
  type Reading,
  type RunInput,
  type Series,
  type SeriesPoint,
} from '#shared-core';
import { correctedHeadC } from './corrected-head.ts';
import type { ChannelTrack, LinkGap, RunView } from './run-view.ts';

/**
 * The view with more inputs. Bad readings are in the record but not on the strip: they say nothing. Doubtful
 * ones are kept apart, so that no line, cursor or figure takes them for the head. The head is corrected by the probe's
 * calibration, as the monitor does it: line, band and number stand on one scale. The record keeps what the probe sent.
 */
export function withInputs(view: RunView, inputs: readonly RunInput[]): RunView {
  const last = inputs[inputs.length - 1];
  if (!last) return view;
  const points = new Map<string, SeriesPoint[]>();
  const shown = ({ channel, value }: Reading): number =>
    channel === 'head' ? correctedHeadC(view.settings.probe, value) : value;
  const marks: Mark[] = [];
  const doubtful: SeriesPoint[] = [];
  let gaps = view.gaps;
  for (const input of inputs) {
    if (input.kind === 'mark') marks.push(input);
    else if (input.kind === 'link') gaps = withLinkChange(gaps, input);
    else if (input.quality === 'suspect') {
      if (input.channel === 'head') doubtful.push({ timeS: input.timeS, value: shown(input) });
    } else if (input.quality === 'good') {
      const channelPoints = points.get(input.channel) ?? [];
      points.set(input.channel, channelPoints);
      channelPoints.push({ timeS: input.timeS, value: shown(input) });
    }
  }
  return {
    ...view,
    inputCount: view.inputCount + inputs.length,
    lastInputS: Math.max(view.lastInputS, last.timeS),
    tracks: points.size === 0 ? view.tracks : withPoints(view.tracks, points),
    marks: marks.length === 0 ? view.marks : [...view.marks, ...marks],
    doubtful: doubtful.length === 0 ? view.doubtful : goingOn(view.doubtful, doubtful),
    gaps,
  };
}

function withPoints(
  tracks: RunView['tracks'],
  points: ReadonlyMap<string, readonly SeriesPoint[]>,
): RunView['tracks'] {
  const next: Record<string, ChannelTrack> = { ...tracks };
  for (const [channel, added] of points) {
    const { series } = tracks[channel] ?? { series: emptySeries() };
    next[channel] = { series: goingOn(series, added) };
  }
  return next;
}

function goingOn(series: Series, points: readonly SeriesPoint[]): Series {
  return appendToSeries(series, pointsGoingOn(series, points));
}

function withLinkChange(
  gaps: readonly LinkGap[],
  change: Extract<RunInput, { kind: 'link' }>,
): readonly LinkGap[] {
  const last = gaps[gaps.length - 1];
  const isOpen = last !== undefined && last.toS === null;
  if (change.state === 'lost') {
    const { timeS, reason } = change;
    // A probe that was lost already, and then whoever listened too: two reasons, one after the other.
    if (isOpen && reason !== 'program-closed' && reason !== 'reader-stopped') return gaps;
    const before = isOpen ? [...gaps.slice(0, -1), { ...last, toS: timeS }] : gaps;
    return [...before, { fromS: timeS, toS: null, reason }];
  }
  if (!isOpen) return gaps;
  const isLonger = change.reason === 'clock-stepped';
  return [...gaps.slice(0, -1), { ...last, toS: change.timeS, ...(isLonger && { isLonger }) }];
}
