// @vitest-environment happy-dom
import { cleanup, screen } from '@testing-library/react';
import { afterEach, describe, expect, test } from 'vitest';
import type { ProbeStatus } from '#shared-core';
import { LeftOutNote } from '../../../renderer/probe/index.ts';
import { renderInWindow } from '../support/render-in-window.tsx';

const heard: ProbeStatus = {
  source: null,
  state: 'hearing',
  path: null,
  channels: [],
  latest: [],
  lastLine: null,
  readingsPerS: 10,
  rejectedLines: 0,
  droppedBytes: 0,
  identity: null,
  advice: null,
  problem: null,
};

afterEach(cleanup);

describe('LeftOutNote', () => {
  test('says what was left out, and only of what something was', () => {
    renderInWindow(<LeftOutNote probe={{ ...heard, droppedReadings: 43_743 }} />);
    expect(document.body.textContent).toContain('Left out so far: 43\u202f743 of other channels.');
  });

  test('the growing count is not read out again and again', () => {
    renderInWindow(<LeftOutNote probe={{ ...heard, thinnedHeadReadings: 12 }} />);
    expect(screen.getByRole('status').textContent).not.toMatch(/\d/);
  });

  test('says nothing while everything is taken', () => {
    renderInWindow(<LeftOutNote probe={{ ...heard, droppedReadings: 0 }} />);
    expect(document.body.textContent).toBe('');
  });
});
