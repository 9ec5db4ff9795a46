import { expect, test } from 'vitest';
import { serialSourceSchema } from '#shared-core';
import { withHead } from '../../../renderer/probe/with-head.ts';

const probe = (path: string, channels?: Record<string, string>) =>
  serialSourceSchema.parse({ kind: 'serial', path, ...(channels && { channels }) });

test('the number chosen among several probes becomes the head of the probe that brings it, and of no other', () => {
  const source = {
    kind: 'several' as const,
    probes: [probe('/dev/one'), probe('/dev/two', { head: 'pot' })],
    timeScale: 1,
  };
  const origins = [
    { channel: 'n', probe: 0, own: 'n' },
    { channel: 'pot', probe: 1, own: 'pot' },
    { channel: 'n-2', probe: 1, own: 'n' },
  ];
  expect({
    renamed: withHead(source, 'pot', origins),
    numbered: withHead(source, 'n-2', origins),
    ofUnknownOrigin: withHead(source, 'room', origins),
  }).toEqual({
    renamed: { ...source, probes: [probe('/dev/one'), probe('/dev/two', { head: 'head' })] },
    numbered: {
      ...source,
      probes: [probe('/dev/one'), probe('/dev/two', { head: 'pot', n: 'head' })],
    },
    ofUnknownOrigin: null,
  });
});
