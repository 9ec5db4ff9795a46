// @vitest-environment happy-dom
import { cleanup, fireEvent, screen, within } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { defaultRunSettings, studyRun } from '#shared-core';
import { settingsFromDraft } from '../../../renderer/draft/index.ts';
import type { WindowParts } from '../../../renderer/parts/stores-context.ts';
import { draftFromSetUp } from '../../../renderer/prepare/draft-from-set-up.ts';
import { setUpFromDraft } from '../../../renderer/prepare/set-up-from-draft.ts';
import { TrialSection } from '../../../renderer/prepare/trial-section.tsx';
import { firstDraft } from '../../../renderer/stores/prepare-draft.ts';
import { reportOf } from '../../../shared-core/report/report-of.ts';
import { runSettingsSchema } from '../../../shared-core/run/run-settings.ts';
import { renderInWindow } from '../support/render-in-window.tsx';

afterEach(cleanup);

const tried = {
  trials: [
    { trial: 'sound', worked: true, role: 'teacher', triedAtIso: '2026-01-01T09:00:00.000Z' },
    { trial: 'screen', worked: false, role: 'technician', triedAtIso: '2026-01-01T09:01:00.000Z' },
  ],
} as const;

function show(canAct = true) {
  const played: string[] = [];
  let parts: WindowParts | undefined;
  renderInWindow(<TrialSection canAct={canAct} />, undefined, (made) => {
    parts = made;
    Object.assign(made.chime, { play: (call: string) => played.push(call) });
    const app = {
      version: '1',
      modelVersion: '1',
      shell: 'loopback',
      platform: 'linux',
      runsFolder: '/runs',
      mayCommand: true,
      secondScreen: { by: 'address', address: 'http://127.0.0.1:1/#token=x' },
    } as const;
    made.bench.getState().dispatch({ type: 'app', app });
  });
  return { played, draft: () => parts?.prepare.getState().draft, parts: () => parts };
}

test('the urgent call is played as it will sound, and the person says whether it was heard', () => {
  const { played, draft } = show();
  fireEvent.click(screen.getByRole('button', { name: 'Play the urgent call' }));
  const heard = within(screen.getByRole('group', { name: 'Was it heard at the still?' }));
  expect([played, draft()?.trials]).toEqual([['high'], []]);
  fireEvent.click(heard.getByLabelText('No'));
  expect(draft()?.trials).toMatchObject([{ trial: 'sound', worked: false, role: 'teacher' }]);
  screen.getByText('call not heard at the still');
  screen.getByText(/Turn this computer’s sound up/);
  fireEvent.click(heard.getByLabelText('Yes'));
  expect(draft()?.trials).toMatchObject([{ trial: 'sound', worked: true }]);
  expect(screen.queryByRole('status')).toBe(null);
});

test('a sound that is switched off is told beside its trial, and switched on there', () => {
  const { parts } = show();
  expect(screen.queryByText(/Sound with prompts is off/)).toBe(null);
  cleanup();
  renderInWindow(<TrialSection canAct />, undefined, (made) => {
    made.preferences.getState().set({ sound: false });
  });
  screen.getByText(/Sound with prompts is off/);
  fireEvent.click(screen.getByRole('button', { name: 'Switch it on' }));
  expect(screen.queryByText(/Sound with prompts is off/)).toBe(null);
  expect(parts()?.preferences.getState().sound).toBe(true);
});

test('for a card that the back row can’t read it is said what helps', () => {
  const { draft } = show();
  screen.getByRole('button', { name: 'Show the class a test card' });
  const read = within(
    screen.getByRole('group', { name: 'Is its smallest line read from the back row?' }),
  );
  fireEvent.click(read.getByLabelText('No'));
  expect(draft()?.trials).toMatchObject([{ trial: 'screen', worked: false }]);
  screen.getByText(/Darken the room, make the picture larger/);
});

test('what was tried in this room is still true when a kept set-up is filled in', () => {
  const setUp = setUpFromDraft(firstDraft, null);
  const draft = { ...firstDraft, ...tried };
  expect(setUp.ok && draftFromSetUp(setUp.value, draft, '.')).toMatchObject(tried);
});

test('what was tried goes into the record with role and time, and into the report', () => {
  const settings = settingsFromDraft({ ...firstDraft, altitudeM: '0', ...tried });
  expect(settings.ok && runSettingsSchema.parse(settings.value).trials).toEqual(tried.trials);
  const study = studyRun({
    runId: 'a',
    name: 'Pear',
    startedAtIso: '',
    rehearsal: false,
    settings: settings.ok ? settings.value : defaultRunSettings,
    appVersion: '0',
    modelVersion: '1',
    inputs: [],
    endS: 60,
  });
  expect(JSON.stringify(reportOf([study]))).toContain(
    'call heard at the still (teacher); class screen not read from the back row (technician)',
  );
  const untried = settingsFromDraft({ ...firstDraft, altitudeM: '0' });
  expect(untried.ok && 'trials' in untried.value).toBe(false);
});
