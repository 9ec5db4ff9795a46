import { createStore, type StoreApi } from 'zustand/vanilla';
import { type Preferences, preferencesFrom, storedObject } from './preferences.ts';

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
  return createStore<PreferencesState>()((set) => ({
    ...preferencesFrom(storage.getItem(preferencesKey), localeDecimal),
    set: (changes) => {
      set(changes);
      keep(storage, changes);
    },
  }));
}

/** What a newer version of this program keeps here stays as it is; what can't be read is kept beside it. */
function keep(storage: Pick<Storage, 'getItem' | 'setItem'>, changes: Partial<Preferences>): void {
  const stored = storage.getItem(preferencesKey);
  const known = storedObject(stored);
  if (stored !== null && known === null)
    storage.setItem(`${preferencesKey}.not-understood`, stored);
  storage.setItem(preferencesKey, JSON.stringify({ ...known, ...changes }));
}
