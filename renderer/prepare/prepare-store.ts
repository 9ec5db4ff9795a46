import { createStore, type StoreApi } from 'zustand/vanilla';
import { firstDraft, type PrepareDraft } from './prepare-draft.ts';

export interface PrepareState {
  readonly draft: PrepareDraft;
  readonly change: (change: Partial<PrepareDraft>) => void;
  readonly replace: (draft: PrepareDraft) => void;
}

export type PrepareStore = StoreApi<PrepareState>;

export function createPrepareStore(): PrepareStore {
  return createStore<PrepareState>()((set) => ({
    draft: firstDraft,
    change: (change) => set(({ draft }) => ({ draft: { ...draft, ...change } })),
    replace: (draft) => set({ draft }),
  }));
}
