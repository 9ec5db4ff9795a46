// @vitest-environment happy-dom
import { cleanup, fireEvent, screen, waitFor } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import type { ProbeStatus } from '#shared-core';
import { noProbeStatus } from '../../../main/probe/probe-status.ts';
import { ProbeHeard } from '../../../renderer/prepare/probe-heard.tsx';
import { StepBar } from '../../../renderer/prepare/step-bar.tsx';
import { firstDraft } from '../../../renderer/stores/prepare-draft.ts';
import { heardProbe } from '../support/heard-probe.ts';
import { renderInWindow } from '../support/render-in-window.tsx';

afterEach(cleanup);

const probe: ProbeStatus = {
  ...heardProbe,
  channels: ['head', 'pot'],
  latest: [
    { kind: 'reading', timeS: 5, channel: 'head', value: 78.29, unit: '°C', quality: 'good' },
    { kind: 'reading', timeS: 5, channel: 'pot', value: 91.29, unit: '°C', quality: 'good' },
  ],
};
const correction = { offsetK: 0.3, gain: 1.01, standardUncertaintyK: 0.1 };

function readings(heard: ProbeStatus, draft: Partial<typeof firstDraft>) {
  const { container } = renderInWindow(
    <>
      <StepBar />
      <ProbeHeard probe={heard} canAct />
    </>,
    undefined,
    ({ bench, prepare }) => {
      bench.getState().dispatch({ type: 'probe', probe: heard });
      prepare.getState().replace({ ...firstDraft, ...draft });
    },
  );
  const texts = (selector: string) =>
    [...container.querySelectorAll(selector)].map(({ textContent }) =>
      textContent?.replaceAll(/\s/g, ' '),
    );
  const step = texts('.step-bar li').find((text) => text?.includes('heard')) ?? '';
  return { readings: texts('.heard-readings li'), step: /[\d.]+ °C/.exec(step)?.[0] };
}

test('a calibrated head stands in Prepare as it will in Watch, with what the probe sends beside it', () => {
  expect(readings(probe, { correction })).toEqual({
    readings: ['still head 79.37 °C calibrated; the probe sends 78.29 °C', 'pot 91.29 °C'],
    step: '79.4 °C',
  });
});

test('a probe that did not come back after a rehearsal is told with its reason and connected again by one press', async () => {
  const { source } = heardProbe;
  const asked: unknown[] = [];
  const notBack = {
    source: source as NonNullable<typeof source>,
    problem: { kind: 'port-busy', path: '/dev/ttyACM0' },
  } as const;
  renderInWindow(<ProbeHeard probe={{ ...noProbeStatus, notBack }} canAct />, (async (
    name: string,
    body: unknown,
  ) => {
    asked.push([name, body]);
    return { ok: true, value: heardProbe };
  }) as never);
  expect(document.body.textContent).toMatch(
    /The probe from before the rehearsal is not connected again.*\/dev\/ttyACM0/,
  );
  fireEvent.click(screen.getByRole('button', { name: 'Connect it again' }));
  await waitFor(() => expect(asked).toEqual([['probe/connect', { source }]]));
});

test('without a calibration, and from a simulated still, which is rehearsed without one, a reading stands as it was sent', () => {
  const still: ProbeStatus = {
    ...probe,
    source: { kind: 'demo', rig: 'glass-bead-column', timeScale: 60, seed: 1 },
  };
  const sent = ['still head 78.29 °C', 'pot 91.29 °C'];
  expect(readings(probe, {}).readings).toEqual(sent);
  cleanup();
  expect(readings(still, { correction }).readings).toEqual(sent);
});
