import { createContext } from 'react';
import type { ConnectedService } from '../service/index.ts';
import type { Chime } from '../sound/index.ts';
import type {
  BenchStore,
  NoteDraftStore,
  PreferencesStore,
  PrepareStore,
  RunViewStore,
} from '../stores/index.ts';
import type { Commands } from './commands.ts';

/** What the window is made of, given once at the top. */
export interface WindowParts {
  readonly service: ConnectedService;
  readonly bench: BenchStore;
  readonly live: RunViewStore;
  readonly preferences: PreferencesStore;
  readonly prepare: PrepareStore;
  readonly noteDraft: NoteDraftStore;
  readonly commands: Commands;
  readonly chime: Chime;
}

export const WindowPartsContext = createContext<WindowParts | null>(null);
