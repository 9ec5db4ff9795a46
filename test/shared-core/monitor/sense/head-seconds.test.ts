import { describe, expect, test } from 'vitest';
import { defaultRunSettings, type Reading, type RunInput } from '#shared-core';
import { createHeadSeconds } from '../../../../shared-core/monitor/sense/head-seconds.ts';
import { createProbeHealth } from '../../../../shared-core/monitor/sense/probe-health.ts';

type LinkChange = Extract<RunInput, { kind: 'link' }>;

const reading = (timeS: number, value: number): Reading => ({
  kind: 'reading',
  timeS,
  channel: 'head',
  value,
  unit: '°C',
  quality: 'good',
});

const link = (
  timeS: number,
  state: LinkChange['state'],
  reason: LinkChange['reason'],
): LinkChange => ({ kind: 'link', timeS, state, reason });

const headAt78 = () => {
  const heads = createHeadSeconds(defaultRunSettings.probe, createProbeHealth(5));
  heads.see(reading(60, 78.4), 61);
  return heads;
};

describe('the newest reading of the head', () => {
  test('stays what it was, with its age, while the probe is unplugged or the computer sleeps', () => {
    for (const reason of ['unplugged', 'computer-asleep'] as const) {
      const heads = headAt78();
      heads.seeLink(link(61, 'lost', reason));
      heads.seeLink(link(90, 'back', reason));
      expect(heads.latest()).toEqual({ timeS: 60, temperatureC: 78.4 });
    }
  });

  test('is none from when the program was closed until the probe is heard again', () => {
    const heads = headAt78();
    heads.seeLink(link(61, 'lost', 'program-closed'));
    heads.seeLink(link(72, 'back', 'program-closed'));
    expect(heads.latest()).toBeNull();
    heads.see(reading(73, 61.5), 74);
    expect(heads.latest()).toEqual({ timeS: 73, temperatureC: 61.5 });
  });
});
