// @vitest-environment happy-dom
import { cleanup, screen } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import type { KeptFerment } from '#shared-core';
import { WarmthSection } from '../../../renderer/warmth/warmth-section.tsx';
import { renderInWindow } from '../support/render-in-window.tsx';

const ferment: KeptFerment = {
  fermentId: 'pears',
  stated: {
    name: 'Pears',
    beganAtIso: '2026-05-01T08:00:00.000Z',
    volumeMl: 1000,
    sugarG: null,
    wentIn: '',
  },
  entries: [],
  corrections: [],
  unreadableLines: 0,
};

afterEach(cleanup);

test('a record of the warmth that can’t be read is told, though there is nothing else to show', () => {
  const watched = {
    report: null,
    problem: 'The disk can’t be read.',
    keep: async () => {},
    leave: async () => {},
  };
  renderInWindow(<WarmthSection ferment={ferment} kept={null} watched={watched} />);
  expect(screen.getByRole('alert').textContent).toBe('The disk can’t be read.');
});
