import { flushSync } from 'react-dom';
import { createRoot } from 'react-dom/client';
import uPlot from 'uplot';
import { config } from 'zod';
import {
  createMonitor,
  createRandom,
  defaultRunSettings,
  type Reading,
  type Snapshot,
} from '#shared-core';
import '../../../renderer/design/design.css';
import '../../../renderer/window/window.css';
import '../../../renderer/strip/strip.css';
import '../../../renderer/watch/watch.css';
import '../../../renderer/understand/understand.css';
import './plot-bench.css';
import {
  createCommands,
  type WindowParts,
  WindowPartsContext,
} from '../../../renderer/parts/index.ts';
import { useLiveView } from '../../../renderer/parts/use-stores.ts';
import {
  createBenchStore,
  createNoteDraftStore,
  createPreferencesStore,
  createPrepareStore,
  createRunViewStore,
} from '../../../renderer/stores/index.ts';
import { WatchRun } from '../../../renderer/watch/index.ts';
import { plainSnapshot } from '../../support/plain-snapshot.ts';

/** What the bench drives from outside the page. */
export interface PlotBench {
  load(readings: number): void;
  showYardstick(): void;
  /** Milliseconds of each redraw of Watch after one more reading, layout included. */
  oursMs(redraws: number): number[];
  /** Lets run time pass, with a redraw every so many readings. */
  pass(readings: number, everyReadings: number): void;
  /** The same for the yardstick: a canvas line through all readings. */
  yardstickMs(redraws: number): number[];
}

config({ jitless: true });

const service: WindowParts['service'] = {
  connection: () => 'open',
  onConnection: () => () => {},
  on: () => () => {},
  request: async () => ({ ok: false, error: { kind: 'disconnected' } }),
};
const bench = createBenchStore();
const live = createRunViewStore();
const parts: WindowParts = {
  service,
  bench,
  live,
  preferences: createPreferencesStore(window.sessionStorage, '.'),
  prepare: createPrepareStore(window.sessionStorage),
  noteDraft: createNoteDraftStore(window.sessionStorage),
  commands: createCommands(service, bench),
  chime: { play: () => {} },
};

const random = createRandom(5);
const everyS = 0.1;

function reading(index: number): Reading {
  const timeS = index * everyS;
  const value = 78.6 + 0.4 * Math.sin(timeS / 700) + 0.05 * random.normal();
  return { kind: 'reading', timeS, channel: 'head', value, unit: '°C', quality: 'good' };
}

let count = 0;
const runId = 'bench';
let snapshot: Snapshot | null = null;
const times: number[] = [];
const values: number[] = [];

function snapshotAt(timeS: number, temperatureC: number): Snapshot {
  snapshot ??= plainSnapshot(createMonitor(defaultRunSettings).push(reading(0)));
  const head = { temperatureC, expandedUncertaintyK: 0.5, rateKPerMin: 0, ageS: 0 };
  const stage = { ...snapshot.stage, stage: 'main-fraction', sinceS: 1200 } as const;
  return { ...snapshot, timeS, head, stage };
}

function addReading(): void {
  const added = reading(count++);
  live.getState().dispatch({ type: 'inputs', runId, inputs: [added] });
  live
    .getState()
    .dispatch({ type: 'snapshot', runId, snapshot: snapshotAt(added.timeS, added.value) });
}

function BenchedWatch() {
  const view = useLiveView((known) => known);
  return view && <WatchRun view={view} />;
}

createRoot(document.getElementById('ours')!).render(
  <WindowPartsContext value={parts}>
    <div className="watch">
      <BenchedWatch />
    </div>
  </WindowPartsContext>,
);

let yardstick: uPlot | null = null;

const plotBench: PlotBench = {
  load(readings) {
    const run = {
      origin: 'live',
      runId,
      name: 'Bench',
      startedAtIso: null,
      settings: defaultRunSettings,
    } as const;
    live.getState().dispatch({ type: 'opened', run });
    for (let from = 0; from < readings; from += 20_000) {
      const inputs = Array.from({ length: Math.min(20_000, readings - from) }, () =>
        reading(count++),
      );
      for (const { timeS, value } of inputs) {
        times.push(timeS);
        values.push(value);
      }
      live.getState().dispatch({ type: 'inputs', runId, inputs });
    }
  },
  showYardstick() {
    const box = document.getElementById('yardstick')!;
    yardstick = new uPlot(
      {
        width: box.clientWidth,
        height: box.clientHeight,
        scales: { x: { time: false } },
        series: [{}, { stroke: 'black', width: 2, points: { show: false } }],
        legend: { show: false },
      },
      [times, values],
      box,
    );
  },
  oursMs: (redraws) =>
    Array.from({ length: redraws }, () => {
      const from = performance.now();
      flushSync(addReading);
      document.body.getBoundingClientRect();
      return performance.now() - from;
    }),
  pass(readings, everyReadings) {
    for (let done = 0; done < readings; done += everyReadings) {
      const inputs = Array.from({ length: everyReadings - 1 }, () => reading(count++));
      live.getState().dispatch({ type: 'inputs', runId, inputs });
      flushSync(addReading);
    }
  },
  yardstickMs: (redraws) =>
    Array.from({ length: redraws }, () => {
      const added = reading(count++);
      times.push(added.timeS);
      values.push(added.value);
      const from = performance.now();
      // Outside a batch it would draw only after this task.
      yardstick?.batch(() => yardstick?.setData([times, values]));
      return performance.now() - from;
    }),
};

Object.assign(window, { plotBench });
