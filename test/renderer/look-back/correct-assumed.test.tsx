// @vitest-environment happy-dom
import { cleanup, screen, waitFor } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { defaultRunSettings, type RunSettings } from '#shared-core';
import { CorrectDialog } from '../../../renderer/look-back/correct-dialog.tsx';
import { pearSummary } from '../support/pear-summary.ts';
import { renderInWindow } from '../support/render-in-window.tsx';

afterEach(cleanup);

async function toldOf(charge: Partial<RunSettings['charge']>): Promise<readonly string[]> {
  const settings = { ...defaultRunSettings, charge: { ...defaultRunSettings.charge, ...charge } };
  const page = { summary: pearSummary, settings, inputs: [], nextIndex: null, endS: 60 };
  renderInWindow(<CorrectDialog run={pearSummary} onClose={() => {}} />, (async () => ({
    ok: true,
    value: page,
  })) as never);
  const volume = screen.getByLabelText<HTMLInputElement>('Volume in the pot');
  await waitFor(() => expect(volume.value).toBe('350'));
  const told = document.body.textContent?.match(/The (volume|strength) was only assumed/g) ?? [];
  cleanup();
  return told;
}

test('whoever corrects a run is told what of its charge nobody had stated', async () => {
  expect(await toldOf({ assumed: ['volume', 'strength'] })).toEqual([
    'The volume was only assumed',
    'The strength was only assumed',
  ]);
  expect(await toldOf({})).toEqual([]);
});
