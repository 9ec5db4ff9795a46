import { createStore, type StoreApi } from 'zustand/vanilla';

export interface NoteDraftState {
  /** What was typed and is not yet in the record. */
  readonly text: string;
  readonly write: (text: string) => void;
}

export type NoteDraftStore = StoreApi<NoteDraftState>;

const storageKey = 'note-draft';

/** A note being written. It outlives its field, the place and a reload: only what was kept or wiped is gone. */
export function createNoteDraftStore(
  storage: Pick<Storage, 'getItem' | 'setItem'>,
): NoteDraftStore {
  return createStore<NoteDraftState>()((set) => ({
    text: storage.getItem(storageKey) ?? '',
    write: (text) => {
      set({ text });
      storage.setItem(storageKey, text);
    },
  }));
}
