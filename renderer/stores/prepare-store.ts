import { createStore, type StoreApi } from 'zustand/vanilla';
import { firstDraft, type PrepareDraft } from './prepare-draft.ts';
import { keptDraft, restoredDraft } from './prepare-memory.ts';

export interface PrepareState {
  readonly draft: PrepareDraft;
  readonly change: (change: Partial<PrepareDraft>) => void;
  readonly replace: (draft: PrepareDraft) => void;
}

export type PrepareStore = StoreApi<PrepareState>;

const storageKey = 'prepare-draft';

/** What is typed in Prepare. The storage is that of one session of the window: a barometer's reading of yesterday is no entry of today. */
export function createPrepareStore(storage: Pick<Storage, 'getItem' | 'setItem'>): PrepareStore {
  return createStore<PrepareState>()((set, get) => {
    const replace = (draft: PrepareDraft) => {
      set({ draft });
      storage.setItem(storageKey, keptDraft(draft));
    };
    return {
      draft: restoredDraft(storage.getItem(storageKey)) ?? firstDraft,
      change: (change) => replace({ ...get().draft, ...change }),
      replace,
    };
  });
}
