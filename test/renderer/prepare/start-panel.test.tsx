// @vitest-environment happy-dom
import { cleanup, fireEvent, screen, waitFor } from '@testing-library/react';
import { afterEach, describe, expect, test } from 'vitest';
import type { ProbeStatus, RequestName } from '#shared-core';
import type { WindowParts } from '../../../renderer/parts/stores-context.ts';
import { ProbeHeard } from '../../../renderer/prepare/probe-heard.tsx';
import { rehearse } from '../../../renderer/prepare/rehearse.ts';
import { safetyLooks } from '../../../renderer/prepare/safety-checks.ts';
import { StartPanel } from '../../../renderer/prepare/start-panel.tsx';
import { firstDraft } from '../../../renderer/stores/prepare-draft.ts';
import { heardProbe } from '../support/heard-probe.ts';
import { renderInWindow } from '../support/render-in-window.tsx';

const serial: ProbeStatus = { ...heardProbe, lastLine: '17,78.29,91.29' };
const simulated: ProbeStatus = {
  ...serial,
  source: { kind: 'demo', rig: 'glass-bead-column', timeScale: 60, seed: 1 },
};
const unnamed: ProbeStatus = {
  ...serial,
  channels: ['channel-1', 'channel-2', 'channel-3'],
  latest: [17, 78.29, 91.29].map((value, index) => ({
    kind: 'reading',
    timeS: 5,
    channel: `channel-${index + 1}`,
    value,
    unit: '1',
    quality: 'good',
  })),
};

function show(probe: ProbeStatus, confirmed = safetyLooks.length) {
  const asked: [RequestName, unknown][] = [];
  let parts: WindowParts | null = null;
  const request = async (name: RequestName, body: unknown) => {
    asked.push([name, body]);
    return { ok: true, value: { runId: 'r1' } } as never;
  };
  renderInWindow(
    <>
      <ProbeHeard probe={probe} canAct />
      <StartPanel canAct />
    </>,
    request as never,
    (made) => {
      parts = made;
      made.bench.getState().dispatch({ type: 'probe', probe });
      const confirms = safetyLooks
        .slice(0, confirmed)
        .flatMap(({ checks }) => checks.map(({ id }) => ({ check: id, role: 'teacher' as const })));
      made.prepare.getState().replace({ ...firstDraft, altitudeM: '0', confirms });
    },
  );
  const missing = () =>
    [...document.querySelectorAll('.missing li')].map(({ textContent }) => textContent);
  return { asked, missing, confirms: () => parts?.prepare.getState().draft.confirms };
}

const checkIds = safetyLooks.flatMap(({ checks }) => checks.map(({ id }) => id));

const start = () => screen.getByRole<HTMLButtonElement>('button', { name: 'Start the run' });

afterEach(() => {
  cleanup();
  window.location.hash = '';
});

describe('the start of a run', () => {
  test('the simulated still is called so, is no probe, and waives no check', () => {
    const { missing } = show(simulated, 0);
    expect(missing()).toEqual([
      'Connect a probe that is heard',
      `Confirm the ${safetyLooks.length} looks before heat`,
    ]);
    expect(start().disabled).toBe(true);
    expect(document.body.textContent).toContain('Simulated still');
    expect(document.body.textContent).not.toContain('Heard clearly');
  });

  test('numbers of which none is the still head: it is asked which, and the start waits', async () => {
    const { asked, missing } = show(unnamed);
    expect(missing()).toEqual(['Say which number is the still head']);
    expect(start().disabled).toBe(true);
    screen.getByRole('group', { name: /Which one hangs in the still head/ });
    fireEvent.click(screen.getByRole('button', { name: /^number 2\s*78\.29/ }));
    await waitFor(() => expect(asked).toHaveLength(1));
    expect(asked[0]).toEqual([
      'probe/connect',
      { source: { ...serial.source, channels: { 'channel-2': 'head' } } },
    ]);
  });

  test('a run that has started takes its checks along: the next one asks for them again', async () => {
    const { asked, confirms, missing } = show(serial);
    expect(missing()).toEqual([]);
    fireEvent.click(start());
    await waitFor(() => expect(confirms()).toEqual([]));
    expect(asked[0]).toMatchObject([
      'run/start',
      { settings: { safetyConfirms: checkIds.map((check) => ({ check })) } },
    ]);
    expect(missing()).toEqual([`Confirm the ${safetyLooks.length} looks before heat`]);
  });

  test('a rehearsal that does not start makes no mark, and leaves the still to the service, which lets go of it', async () => {
    const done: string[] = [];
    const did = (name: string, answer: boolean) => async () => {
      done.push(name);
      return answer;
    };
    const commands = {
      connect: did('connect', true),
      start: did('start', false),
      mark: did('mark', true),
      disconnect: did('disconnect', true),
    };
    expect(await rehearse(commands as never, 60)).toBe(false);
    expect(done).toEqual(['connect', 'start']);
  });
});
