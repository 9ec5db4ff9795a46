// @vitest-environment happy-dom
import { cleanup, screen } from '@testing-library/react';
import { afterEach, describe, expect, test } from 'vitest';
import { createMonitor, defaultRunSettings } from '#shared-core';
import { HeadReadout } from '../../../renderer/watch/head-readout.tsx';
import { type Liveness, livenessOf } from '../../../renderer/watch/liveness.ts';
import { Sentence } from '../../../renderer/watch/sentence.tsx';
import { renderInWindow } from '../support/render-in-window.tsx';

const snapshot = createMonitor(defaultRunSettings).push({
  kind: 'reading',
  timeS: 1,
  channel: 'head',
  value: 79.1,
  unit: '°C',
  quality: 'good',
});

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
  test('only a run that goes on over an open connection is live', () => {
    const running = { origin: 'live', endedS: null } as const;
    expect([
      livenessOf(running, 'open'),
      livenessOf(running, 'lost'),
      livenessOf(running, 'refused'),
      livenessOf({ ...running, endedS: 60 }, 'lost'),
      livenessOf({ ...running, origin: 'replay' }, 'lost'),
    ]).toEqual(['live', 'cut-off', 'cut-off', 'ended', 'past']);
  });
});

describe('what is not so now', () => {
  test('a lost connection strikes the temperature and sends the person to the thermometer', () => {
    const shown = show('cut-off');
    expect(shown).toContain('Go by the thermometer in the still head.');
    expect(shown).toContain('not the present value [struck]');
    expect(shown).not.toContain(snapshot.sentence);
  });

  test('a run that has ended says so in place of its last sentence', () => {
    const shown = show('ended');
    expect(shown).toContain('This run ended at 1:12:01. Nothing is watched any more.');
    expect(shown).toContain('last reading of the run');
  });

  test('a live run and a replay say what the monitor says', () => {
    for (const liveness of ['live', 'past'] as const) {
      expect(show(liveness)).toContain(snapshot.sentence.slice(0, 20));
    }
    expect(screen.queryByText(/not the present/)).toBeNull();
  });
});
