import { expect, test } from 'vitest';
import { createPreferencesStore } from '../../../renderer/stores/index.ts';

function storeOver(kept: string | null) {
  const stored = new Map(kept === null ? [] : [['preferences', kept]]);
  const storage = {
    getItem: (key: string) => stored.get(key) ?? null,
    setItem: (key: string, text: string) => void stored.set(key, text),
  };
  return { preferences: createPreferencesStore(storage, '.'), stored };
}

test('what a newer version keeps beside what this one changes stays as it is', () => {
  const { preferences, stored } = storeOver('{"theme":"sepia","sound":true,"shelf":3}');
  expect(preferences.getState()).toMatchObject({ theme: 'system', sound: true });
  preferences.getState().set({ sound: false });
  expect(JSON.parse(stored.get('preferences') ?? '')).toEqual({
    theme: 'sepia',
    sound: false,
    shelf: 3,
  });
});

test('what an older version kept is read, with the usual for what it lacks', () => {
  const { preferences } = storeOver('{"sound":false}');
  expect(preferences.getState()).toMatchObject({ sound: false, markKeys: true, decimal: '.' });
});

test('what cannot be read is kept beside, and nothing of it is lost', () => {
  const { preferences, stored } = storeOver('{"theme":"da');
  preferences.getState().set({ theme: 'dark' });
  expect(Object.fromEntries(stored)).toEqual({
    preferences: '{"theme":"dark"}',
    'preferences.not-understood': '{"theme":"da',
  });
  expect(storeOver(null).preferences.getState().theme).toBe('system');
});
