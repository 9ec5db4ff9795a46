// @vitest-environment happy-dom
import { cleanup, fireEvent, screen } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { type ProbeStatus, serialSourceSchema } from '#shared-core';
import type { WindowParts } from '../../../renderer/parts/stores-context.ts';
import { HeadQuestion } from '../../../renderer/probe/index.ts';
import { renderInWindow } from '../support/render-in-window.tsx';

afterEach(cleanup);

const reading = (channel: string, value: number, unit: '°C' | 'g') =>
  ({ timeS: 1, channel, value, unit, quality: 'good', probeTimeS: null }) as const;
const [one, two] = ['/dev/one', '/dev/two'].map((path) =>
  serialSourceSchema.parse({ kind: 'serial', path, channels: { head: 'pot' } }),
);

test('of several probes each temperature is offered as the head with its port, and one press answers', async () => {
  const asked: unknown[] = [];
  const request = (async (name: string, body: unknown) => {
    asked.push([name, body]);
    return { ok: false, error: { kind: 'disconnected' } };
  }) as WindowParts['service']['request'];
  const probe = {
    state: 'silent',
    source: { kind: 'several', probes: [one, two], timeScale: 1 },
    path: '/dev/one, /dev/two',
    lastLine: null,
    channels: ['pot', 'pot-2', 'receiver'],
    latest: [
      reading('pot', 78.4, '°C'),
      reading('pot-2', 91.5, '°C'),
      reading('receiver', 85.2, 'g'),
    ],
    origins: [
      { channel: 'pot', probe: 0, own: 'pot' },
      { channel: 'pot-2', probe: 1, own: 'pot' },
      { channel: 'receiver', probe: 1, own: 'receiver' },
    ],
    readingsPerS: 1,
    rejectedLines: 0,
    droppedBytes: 0,
    problem: null,
    advice: null,
  } as unknown as ProbeStatus;
  renderInWindow(<HeadQuestion probe={probe} canAct />, request);
  const buttons = screen.getAllByRole('button');
  expect(buttons.map(({ textContent }) => textContent)).toEqual([
    expect.stringMatching(/^pot 78\.40.*\/dev\/one$/),
    expect.stringMatching(/^second pot 91\.50.*\/dev\/two$/),
  ]);
  fireEvent.click(buttons[1] as HTMLElement);
  const probes = [one, { ...two, channels: { head: 'head' } }];
  await expect
    .poll(() => asked)
    .toEqual([['probe/connect', { source: { kind: 'several', probes, timeScale: 1 } }]]);
});
