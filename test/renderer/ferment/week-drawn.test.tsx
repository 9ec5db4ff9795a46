// @vitest-environment happy-dom
import { cleanup, screen } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import type { WarmthReport } from '#shared-core';
import { WeekDrawn } from '../../../renderer/ferment/week-drawn.tsx';
import { nothingRead } from '../../support/nothing-read.ts';
import { renderInWindow } from '../support/render-in-window.tsx';

afterEach(cleanup);

const beganAtIso = '2026-05-01T08:00:00.000Z';
const askedFor: WarmthReport = {
  fermentId: 'pears',
  keeping: {
    band: { lowC: 22, aimC: 25, highC: 28 },
    channel: 'head',
    sinceIso: '2026-05-02T08:00:00.000Z',
  },
  isKeptNow: true,
  stretches: [],
};

test('the band that was asked for is the one that is drawn, before anything is heard as well', () => {
  renderInWindow(
    <WeekDrawn
      ferment={{
        fermentId: 'pears',
        stated: { name: 'Pears', beganAtIso, volumeMl: 400, sugarG: null, wentIn: '' },
        entries: [
          {
            entryId: 1,
            keptAtIso: beganAtIso,
            withdrawnAtIso: null,
            read: { ...nothingRead, atIso: beganAtIso, temperatureC: 24 },
          },
        ],
        corrections: [],
        unreadableLines: 0,
      }}
      endGravity={null}
      warmth={askedFor}
    />,
  );
  expect(screen.getByRole('img').getAttribute('aria-label')).toContain(
    'shaded from 22.0 °C to 28.0 °C',
  );
});
