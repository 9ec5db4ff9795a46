// @vitest-environment happy-dom
import { cleanup, screen } from '@testing-library/react';
import { afterEach, describe, expect, test } from 'vitest';
import { createMonitor, defaultRunSettings, keepUnits, type RunInput } from '#shared-core';
import { runViewAfter } from '../../../renderer/stores/index.ts';
import { headNow } from '../../../renderer/watch/head-now.ts';
import { HeadReadout } from '../../../renderer/watch/head-readout.tsx';
import { type Liveness, livenessOf } from '../../../renderer/watch/liveness.ts';
import { Sentence } from '../../../renderer/watch/sentence.tsx';
import { WatchRun } from '../../../renderer/watch/watch-run.tsx';
import { renderInWindow } from '../support/render-in-window.tsx';

const snapshot = createMonitor(defaultRunSettings).push({
  kind: 'reading',
  timeS: 1,
  channel: 'head',
  value: 79.1,
  unit: '°C',
  quality: 'good',
});

const recording = {
  state: 'recording',
  runId: 'r1',
  startedAtIso: null,
  savedToS: 1,
  problem: null,
} as const;

function show(liveness: Liveness): string {
  renderInWindow(
    <>
      <Sentence snapshot={snapshot} liveness={liveness} endedS={4321} />
      <HeadReadout head={snapshot.head} liveness={liveness} />
    </>,
  );
  const shown = document.body.textContent ?? '';
  const isStruck = document.querySelector('[data-stale=true]') !== null;
  cleanup();
  return isStruck ? `${shown} [struck]` : shown;
}

afterEach(cleanup);

describe('livenessOf', () => {
  test('only a run that goes on over an open connection, and is judged, is live', () => {
    const running = { origin: 'live', endedS: null } as const;
    expect([
      livenessOf(running, { connection: 'open', recording }),
      livenessOf(running, { connection: 'open', recording: null }),
      livenessOf(running, {
        connection: 'open',
        recording: { ...recording, adviceStopped: 'bug' },
      }),
      livenessOf(running, { connection: 'lost', recording }),
      livenessOf(running, { connection: 'refused', recording }),
      livenessOf({ ...running, endedS: 60 }, { connection: 'lost', recording }),
      livenessOf({ ...running, origin: 'replay' }, { connection: 'lost', recording }),
    ]).toEqual(['live', 'live', 'unjudged', 'cut-off', 'cut-off', 'ended', 'past']);
  });
});

describe('what is not so now', () => {
  test('a lost connection strikes the temperature and sends the person to the thermometer', () => {
    const shown = show('cut-off');
    expect(shown).toContain('Go by the thermometer in the still head.');
    expect(shown).toContain('not the present value [struck]');
    expect(shown).not.toContain(snapshot.sentence);
  });

  test('a failed monitor claims nothing: the sentence says so, and the readout is what the probe sends', () => {
    const opened = runViewAfter(null, {
      type: 'opened',
      run: {
        origin: 'live',
        runId: 'r1',
        name: '',
        startedAtIso: null,
        settings: defaultRunSettings,
      },
    });
    const reading = (timeS: number, value: number): RunInput => ({
      kind: 'reading',
      timeS,
      channel: 'head',
      value,
      unit: '°C',
      quality: 'good',
    });
    const judged = runViewAfter(opened, { type: 'snapshot', runId: 'r1', snapshot });
    const inputs = [reading(1, 79.1), reading(5000, 92.4)];
    const view = runViewAfter(judged, { type: 'inputs', runId: 'r1', inputs })!;
    const lost: RunInput = { kind: 'link', timeS: 5005, state: 'lost', reason: 'silent' };
    renderInWindow(<WatchRun view={view} />, undefined, ({ bench }) => {
      const { dispatch } = bench.getState();
      dispatch({ type: 'connection', connection: 'open' });
      dispatch({ type: 'recording', recording: { ...recording, adviceStopped: 'a bug' } });
    });
    const shown = document.body.textContent ?? '';
    expect(shown).toContain('Go by the thermometer in the still head.');
    expect(shown).toContain('92.4°Cas the probe sends it; nothing judges it');
    expect(shown).toContain('This was thought at 0:00:01.');
    for (const claim of [snapshot.sentence, 'steady', 'No prompt']) {
      expect(shown).not.toContain(claim);
    }
    const silent = runViewAfter(view, { type: 'inputs', runId: 'r1', inputs: [lost] })!;
    expect(headNow(silent, 'unjudged')).toBeNull();
    const closed = (timeS: number, state: 'lost' | 'back'): RunInput => ({
      kind: 'link',
      timeS,
      state,
      reason: 'program-closed',
    });
    const headAfter = (...more: RunInput[]) =>
      headNow(runViewAfter(view, { type: 'inputs', runId: 'r1', inputs: more })!, 'unjudged');
    const goesOn = [closed(5001, 'lost'), closed(5012, 'back')];
    expect(headAfter(...goesOn)).toBeNull();
    expect(headAfter(...goesOn, reading(5013, 61.5))?.temperatureC).toBe(61.5);
  });

  test('a run that has ended says so in place of its last sentence', () => {
    const shown = show('ended');
    expect(shown).toContain('This run ended at 1:12:01. Nothing is watched any more.');
    expect(shown).toContain('last reading of the run');
  });

  test('a live run and a replay say what the monitor says', () => {
    for (const liveness of ['live', 'past'] as const) {
      expect(show(liveness)).toContain(keepUnits(snapshot.sentence).slice(0, 20));
    }
    expect(screen.queryByText(/not the present/)).toBeNull();
  });
});
