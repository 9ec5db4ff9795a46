// @vitest-environment happy-dom
import { cleanup, fireEvent, screen } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { createMonitor, type Snapshot } from '#shared-core';
import { noProbeStatus } from '../../../main/probe/probe-status.ts';
import { Countdown, LessonRows } from '../../../renderer/lesson/index.ts';
import type { RunView } from '../../../renderer/stores/index.ts';
import type { ForecastView } from '../../../shared-core/stages/forecast-view.ts';
import { plainSnapshot } from '../../support/plain-snapshot.ts';
import { simulatedRun } from '../../support/simulated-run.ts';
import { renderInWindow } from '../support/render-in-window.tsx';
import { runUnderWay } from '../support/running-run.ts';

afterEach(cleanup);

/** Some minutes into the main fraction, with nothing booked. */
const { settings, inputs } = simulatedRun({ name: 'pear', pressureKPa: 99.4, seed: 1 });
const monitor = createMonitor(settings);
for (const input of inputs) {
  if (input.kind === 'reading' && input.timeS < 1620) monitor.push(input);
}
const judged = plainSnapshot(monitor.snapshot());

function withEnd(low: number, high: number): Snapshot {
  const forecast: ForecastView = {
    ...judged.forecast!,
    mainFractionEndS: {
      low: judged.timeS + low,
      value: judged.timeS + low,
      high: judged.timeS + high,
    },
  };
  return { ...judged, forecast };
}

const startedAt = new Date(2026, 2, 18, 9, 58);
/** The clock of a computer that nobody set during the run. */
const onTime = () => startedAt.getTime() + 1000 * judged.timeS;

function show(
  snapshot: Snapshot,
  startedAtIso: string | null = startedAt.toISOString(),
  timeScale = 1,
) {
  let shown: RunView | null = null;
  const draw = (parts: Parameters<typeof runUnderWay>[0]) => {
    runUnderWay(parts);
    parts.bench.getState().dispatch({
      type: 'probe',
      probe: {
        ...noProbeStatus,
        state: 'hearing',
        source: { kind: 'demo', rig: 'glass-bead-column', timeScale, seed: 1 },
        channels: ['head'],
        readingsPerS: 1,
      },
    });
    const { view } = parts.live.getState();
    if (view) shown = { ...view, snapshot, startedAtIso, settings };
  };
  const { container } = renderInWindow(<Late view={() => shown} />, undefined, draw);
  return () => (container.textContent ?? '').replaceAll(/[\s\u2009\u202f]/g, ' ');
}

function Late({ view }: { readonly view: () => RunView | null }) {
  const shown = view();
  return shown && <LessonRows view={shown} isLive nowMs={onTime} />;
}

test('the monitor’s own forecast asks for a reading of the receiver beside the range it would narrow', () => {
  expect(judged.stage.stage).toBe('main-fraction');
  expect(show(judged)()).toMatch(
    /Heat off, at 80 % vol.*Read the volume to narrow this by \d0 %\./,
  );
});

test('a rehearsal that flies names no time of the clock, and asks for no bell', () => {
  const text = show(withEnd(300, 600), undefined, 60)();
  expect(text).toMatch(/Heat off, at 80 % volin 5–10 min/);
  expect(text).not.toMatch(/\d:\d\d|bell/);
});

test('a range no lesson can be planned by is not told as one: it is too early, and by the volume alone it is told what to look for', () => {
  const said = show(withEnd(8 * 60, 55 * 60))();
  expect(said).toContain('too early to tell');
  expect(said).toMatch(/not before 10:\d\d( AM)? · expected once \d+–\d+ mL have come over/);
  expect(said).not.toMatch(/55 min|by then/);
});

test('where a rehearsal flies, it is told how long it need not be reckoned with', () => {
  const said = show(withEnd(8 * 60 + 20, 55 * 60), undefined, 60)();
  expect(said).toContain('too early to tell not in the next 8 min · expected once');
});

test('such a range that begins in minutes raises no alarm: it says when to look next', () => {
  const said = show(withEnd(2 * 60 + 20, 33 * 60))();
  expect(said).toMatch(
    /too early to tell not in the next 2 min; perhaps soon after, perhaps much later · expected once \d+–\d+ mL have come over/,
  );
  expect(said).not.toMatch(/not before|33 min|by then|any time/);
  expect(show(withEnd(20, 33 * 60))()).toContain(
    'too early to tell perhaps within minutes, perhaps much later: keep an eye on the head',
  );
});

test('a range of use is told by the clock, and as the time to wait', () => {
  const said = show(withEnd(20 * 60, 35 * 60))();
  expect(said).toMatch(/about 10:4\d – 11:00( AM)?/);
  expect(said).toContain('in 20–35 min');
});

test('without a clock it is the time to wait alone', () => {
  expect(show(withEnd(20 * 60, 35 * 60), null)()).toMatch(/Heat off, at 80 % volin 20–35 min/);
});

test('against the bell even a wide range may be told', () => {
  const said = show(withEnd(2 * 60, 33 * 60));
  fireEvent.change(screen.getByLabelText('The bell rings at'), { target: { value: '11:45' } });
  expect(said()).toContain('Heat off is expected before the bell.');
  fireEvent.change(screen.getByLabelText('The bell rings at'), { target: { value: '10:40' } });
  expect(said()).toContain('Heat off may come after the bell');
  fireEvent.change(screen.getByLabelText('The bell rings at'), { target: { value: '10:26' } });
  expect(said()).toContain('Heat off is expected after the bell');
});

test('the class gets a countdown once it is known to five minutes, and not before', () => {
  const counted = (snapshot: Snapshot) => {
    const { container } = renderInWindow(<Countdown snapshot={snapshot} />);
    const said = container.textContent;
    cleanup();
    return said;
  };
  expect([counted(withEnd(240, 540)), counted(withEnd(240, 560))]).toEqual([
    'Heat off in 4–9 min',
    '',
  ]);
});

test('where the model fails the row says why, and that the end is not foreseen', () => {
  const doubt = 'This still does not behave as the model expects: go by the head.';
  const told = withEnd(20 * 60, 35 * 60);
  const doubted = { ...told, forecast: { ...told.forecast!, doubt } };
  expect(show(doubted)()).toMatch(
    /Heat off, at 80 % vol.*The model and this still disagree\.Why\?This still does not behave/,
  );
  cleanup();
  const unforeseen = { ...told.forecast!, mainFractionEndS: null, doubt };
  expect(show({ ...told, forecast: unforeseen })()).toContain(
    `Heat off, at 80 % volnot foreseen${doubt}`,
  );
});
