import { createStore, type StoreApi } from 'zustand/vanilla';
import type { RunView, RunViewEvent } from './run-view.ts';
import { runViewAfter } from './run-view-reducer.ts';

export interface RunViewState {
  readonly view: RunView | null;
  readonly dispatch: (event: RunViewEvent) => void;
}

export type RunViewStore = StoreApi<RunViewState>;

export function createRunViewStore(): RunViewStore {
  return createStore<RunViewState>()((set) => ({
    view: null,
    dispatch: (event) => set((state) => ({ view: runViewAfter(state.view, event) })),
  }));
}
