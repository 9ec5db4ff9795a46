import { type RenderResult, render } from '@testing-library/react';
import type { ReactElement } from 'react';
import { createCommands } from '../../../renderer/parts/commands.ts';
import { type WindowParts, WindowPartsContext } from '../../../renderer/parts/stores-context.ts';
import {
  createBenchStore,
  createNoteDraftStore,
  createPreferencesStore,
  createRunViewStore,
} from '../../../renderer/stores/index.ts';
import { createPrepareStore } from '../../../renderer/stores/prepare-store.ts';

type Request = WindowParts['service']['request'];

const disconnected: Request = async () => ({ ok: false, error: { kind: 'disconnected' } });

/** Renders a part of the window with stores of its own and a stand-in for the services. */
export function renderInWindow(
  element: ReactElement,
  request: Request = disconnected,
  /** What the stores hold before anything is drawn. */
  fill: (parts: WindowParts) => void = () => {},
): RenderResult {
  const service: WindowParts['service'] = {
    connection: () => 'open',
    onConnection: () => () => {},
    on: () => () => {},
    request,
  };
  const bench = createBenchStore();
  const parts: WindowParts = {
    service,
    bench,
    live: createRunViewStore(),
    preferences: createPreferencesStore({ getItem: () => null, setItem: () => {} }, '.'),
    prepare: createPrepareStore({ getItem: () => null, setItem: () => {} }),
    noteDraft: createNoteDraftStore({ getItem: () => null, setItem: () => {} }),
    commands: createCommands(service, bench),
    chime: { play: () => {} },
  };
  fill(parts);
  return render(<WindowPartsContext value={parts}>{element}</WindowPartsContext>);
}
