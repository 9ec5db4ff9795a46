// @vitest-environment happy-dom
import { cleanup, fireEvent, screen, within } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import type { WindowParts } from '../../../renderer/parts/stores-context.ts';
import { draftFromSetUp } from '../../../renderer/prepare/draft-from-set-up.ts';
import { setUpFromDraft } from '../../../renderer/prepare/set-up-from-draft.ts';
import { TrialSection } from '../../../renderer/prepare/trial-section.tsx';
import { firstDraft } from '../../../renderer/stores/prepare-draft.ts';
import { renderInWindow } from '../support/render-in-window.tsx';

afterEach(cleanup);

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
  expect([played, draft()?.soundHeard]).toEqual([['high'], 'unsaid']);
  fireEvent.click(heard.getByLabelText('No'));
  expect(draft()?.soundHeard).toBe('no');
  screen.getByText(/Turn this computer’s sound up/);
  fireEvent.click(heard.getByLabelText('Yes'));
  expect([draft()?.soundHeard, screen.queryByRole('status')]).toEqual(['yes', null]);
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
  expect(draft()?.backRowReads).toBe('no');
  screen.getByText(/Darken the room, make the picture larger/);
});

test('what was tried in this room is still true when a kept set-up is filled in', () => {
  const setUp = setUpFromDraft(firstDraft, null);
  const draft = { ...firstDraft, soundHeard: 'yes', backRowReads: 'no' } as const;
  expect(setUp.ok && draftFromSetUp(setUp.value, draft, '.')).toMatchObject({
    soundHeard: 'yes',
    backRowReads: 'no',
  });
});
