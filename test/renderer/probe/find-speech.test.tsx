// @vitest-environment happy-dom
import { act, cleanup, fireEvent, screen } from '@testing-library/react';
import { useState } from 'react';
import { afterEach, describe, expect, test } from 'vitest';
import { type ProbeStatus, serialSourceSchema } from '#shared-core';
import type { WindowParts } from '../../../renderer/parts/stores-context.ts';
import { FindSpeech } from '../../../renderer/probe/index.ts';
import { renderInWindow } from '../support/render-in-window.tsx';

const source = serialSourceSchema.parse({ kind: 'serial', path: '/dev/ttyUSB0' });
const unreadable: ProbeStatus = {
  state: 'unreadable',
  source,
  path: source.path,
  lastLine: '??',
  identity: null,
  channels: [],
  latest: [],
  readingsPerS: 0,
  rejectedLines: 9,
  droppedBytes: 0,
  problem: null,
  advice: null,
};

let setProbe: (probe: ProbeStatus | null) => void = () => {};
function Host() {
  const [probe, set] = useState<ProbeStatus | null>(unreadable);
  setProbe = set;
  return <FindSpeech probe={probe} canAct />;
}

/** Answers when told to, as a search of half a minute does. */
function showSearch(): (answer: unknown) => Promise<void> {
  let answer: (value: unknown) => void = () => {};
  const request: unknown = () =>
    new Promise<unknown>((resolve) => {
      answer = resolve;
    });
  renderInWindow(<Host />, request as WindowParts['service']['request']);
  fireEvent.click(screen.getByRole('button', { name: 'Find out how it speaks' }));
  return (value) => act(async () => answer(value));
}

afterEach(cleanup);

describe('FindSpeech', () => {
  test('the search and what came of it stay in sight although the port is let go of for it', async () => {
    const answer = showSearch();
    act(() => setProbe({ ...unreadable, state: 'none', source: null, path: null }));
    expect(screen.getByRole('status').textContent).toContain('Trying speeds and languages');
    await answer({
      ok: true,
      value: { source, heard: ['78.4'], because: 'Plain text at 9600 baud.' },
    });
    expect(screen.getByRole('status').textContent).toBe('Plain text at 9600 baud.');
    expect(screen.getByRole('button', { name: 'Connect like this' })).toBeDefined();
  });

  test('a search that found nothing says so and can be made again', async () => {
    const answer = showSearch();
    act(() => setProbe(null));
    await answer({ ok: true, value: { source: null, heard: [], because: 'Nothing was heard.' } });
    expect(screen.getByRole('status').textContent).toBe('Nothing was heard.');
    expect(screen.queryByRole('button', { name: 'Connect like this' })).toBeNull();
    expect(screen.getByRole('button', { name: 'Try again' })).toBeDefined();
  });

  test('once something is connected again the search is put away', async () => {
    const answer = showSearch();
    act(() => setProbe(null));
    await answer({ ok: true, value: { source, heard: [], because: 'Found.' } });
    act(() => setProbe({ ...unreadable, state: 'hearing' }));
    expect(document.body.textContent).toBe('');
  });

  test('a port that is gone has nothing to search', () => {
    renderInWindow(<Host />);
    act(() => setProbe({ ...unreadable, state: 'lost' }));
    expect(screen.queryByRole('button')).toBeNull();
  });
});
