import { createStore, type StoreApi } from 'zustand/vanilla';
import { type Preferences, preferencesFrom } from './preferences.ts';

export interface PreferencesState extends Preferences {
  readonly set: (changes: Partial<Preferences>) => void;
}

export type PreferencesStore = StoreApi<PreferencesState>;

/** Read under this name by `speak.ts` as well. */
export const preferencesKey = 'preferences';

export function createPreferencesStore(
  storage: Pick<Storage, 'getItem' | 'setItem'>,
  localeDecimal: '.' | ',',
): PreferencesStore {
  return createStore<PreferencesState>()((set, get) => ({
    ...preferencesFrom(storage.getItem(preferencesKey), localeDecimal),
    set: (changes) => {
      set(changes);
      const { set: _, ...kept } = get();
      storage.setItem(preferencesKey, JSON.stringify(kept));
    },
  }));
}
