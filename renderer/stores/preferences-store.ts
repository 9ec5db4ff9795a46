import { createStore, type StoreApi } from 'zustand/vanilla';
import { type Preferences, preferencesFrom } from './preferences.ts';

export interface PreferencesState extends Preferences {
  readonly set: (changes: Partial<Preferences>) => void;
}

export type PreferencesStore = StoreApi<PreferencesState>;

const storageKey = 'preferences';

export function createPreferencesStore(
  storage: Pick<Storage, 'getItem' | 'setItem'>,
  localeDecimal: '.' | ',',
): PreferencesStore {
  return createStore<PreferencesState>()((set, get) => ({
    ...preferencesFrom(storage.getItem(storageKey), localeDecimal),
    set: (changes) => {
      set(changes);
      const { theme, decimal, sound, markKeys, welcomed } = get();
      const kept: Preferences = { theme, decimal, sound, markKeys, welcomed };
      storage.setItem(storageKey, JSON.stringify(kept));
    },
  }));
}
