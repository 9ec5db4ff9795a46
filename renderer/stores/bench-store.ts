import { createStore, type StoreApi } from 'zustand/vanilla';
import { type BenchEvent, type BenchState, benchAfter, unknownBench } from './bench-state.ts';

export type BenchStore = StoreApi<BenchState & { readonly dispatch: (event: BenchEvent) => void }>;

export function createBenchStore(): BenchStore {
  return createStore<BenchState & { readonly dispatch: (event: BenchEvent) => void }>()((set) => ({
    ...unknownBench,
    dispatch: (event) => set((state) => benchAfter(state, event)),
  }));
}
