import { expect, test } from 'vitest';
import { serialSourceSchema } from '#shared-core';
import { probesOf, sourceOf } from '../../../renderer/probe/probes-of-source.ts';

const head = serialSourceSchema.parse({ kind: 'serial', path: '/dev/ttyACM0' });
const pot = { ...head, path: '/dev/ttyACM1', channels: { head: 'pot' } };

test('one probe is a source by itself, two are one source, none is no source', () => {
  expect([sourceOf([head]), sourceOf([head, pot]), sourceOf([])]).toEqual([
    head,
    { kind: 'several', probes: [head, pot] },
    null,
  ]);
});

test('a source comes apart into the probes it was made of', () => {
  expect([
    probesOf(head),
    probesOf({ kind: 'several', probes: [head, pot], timeScale: 1 }),
    probesOf({ kind: 'demo', rig: 'glass-bead-column', timeScale: 60, seed: 1 }),
    probesOf(null),
  ]).toEqual([[head], [head, pot], [], []]);
});
