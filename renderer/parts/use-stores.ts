import { useContext } from 'react';
import { useStore } from 'zustand';
import type { BenchState, PreferencesState, PrepareState, RunView } from '../stores/index.ts';
import { type WindowParts, WindowPartsContext } from './stores-context.ts';

export function useWindowParts(): WindowParts {
  const parts = useContext(WindowPartsContext);
  if (parts === null) throw new Error('no WindowPartsContext above this component');
  return parts;
}

export function useBench<T>(select: (state: BenchState) => T): T {
  return useStore(useWindowParts().bench, select);
}

export function usePreferences<T>(select: (state: PreferencesState) => T): T {
  return useStore(useWindowParts().preferences, select);
}

export function useLiveView<T>(select: (view: RunView | null) => T): T {
  return useStore(useWindowParts().live, ({ view }) => select(view));
}

export function usePrepare<T>(select: (state: PrepareState) => T): T {
  return useStore(useWindowParts().prepare, select);
}
