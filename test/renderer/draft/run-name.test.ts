import { afterEach, expect, test } from 'vitest';
import { setLanguage, setUpSchema } from '#shared-core';
import { settingsFromDraft } from '../../../renderer/draft/settings-from-draft.ts';
import { draftFromSetUp } from '../../../renderer/prepare/draft-from-set-up.ts';
import { setUpFromDraft } from '../../../renderer/prepare/set-up-from-draft.ts';
import { setUpWords } from '../../../renderer/prepare/set-up-words.ts';
import type { PrepareDraft } from '../../../renderer/stores/prepare-draft.ts';
import { createPrepareStore } from '../../../renderer/stores/prepare-store.ts';

afterEach(() => setLanguage('en'));

/** The store of a window whose page is loaded again, as it is when the language is changed. */
function reloadedStore() {
  const kept = new Map<string, string>();
  const storage = {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
  };
  return () => createPrepareStore(storage).getState();
}

const recordedName = (draft: PrepareDraft) => {
  const settings = settingsFromDraft(draft);
  return settings.ok ? settings.value.name : settings.error;
};

test('a run that nobody named is called as the language of the window has it, whichever the form was begun in', () => {
  const load = reloadedStore();
  load().change({ altitudeM: '540' });
  expect(recordedName(load().draft)).toBe('Distillation');
  setLanguage('de');
  expect(recordedName(load().draft)).toBe('Destillation');
});

test('a name that somebody wrote stays as it was written, were it the usual one', () => {
  const load = reloadedStore();
  load().change({ altitudeM: '540', name: 'Distillation' });
  setLanguage('de');
  expect(recordedName(load().draft)).toBe('Distillation');
});

test('a set-up whose run nobody named brings no name into the next lesson, and tells of none', () => {
  const { draft } = reloadedStore()();
  const kept = setUpFromDraft(draft, null);
  const setUp = setUpSchema.parse(kept.ok && kept.value);
  setLanguage('de');
  expect(setUpWords(setUp, '.')).not.toMatch(/Dist/);
  expect(recordedName({ ...draftFromSetUp(setUp, draft, '.'), altitudeM: '540' })).toBe(
    'Destillation',
  );
});
