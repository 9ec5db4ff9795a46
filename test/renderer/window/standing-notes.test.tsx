// @vitest-environment happy-dom
import { cleanup, fireEvent, screen, waitFor, within } from '@testing-library/react';
import { afterEach, describe, expect, test } from 'vitest';
import type { EventBody, RequestName } from '#shared-core';
import type { Place } from '../../../renderer/parts/place.ts';
import { MainWindow } from '../../../renderer/window/index.ts';
import { StandingNotes } from '../../../renderer/window/standing-notes.tsx';
import { renderInWindow } from '../support/render-in-window.tsx';
import { heatOffPrompt, recording, runUnderWay } from '../support/running-run.ts';

const overLimit = { ...heatOffPrompt, alarm: 'over-limit', act: 'Take the heat off now.' } as const;

function show(place: Place, status: EventBody<'recording'> = recording) {
  window.location.hash = place;
  const asked: unknown[] = [];
  const request = async (name: RequestName, body: unknown) => {
    if (name !== 'run/mark') return { ok: false, error: { kind: 'disconnected' } } as never;
    asked.push((body as { mark: unknown }).mark);
    return { ok: true, value: { markId: 1, timeS: 1 } } as never;
  };
  // The plan in Prepare needs a worker, which only a browser has.
  const shown = place === 'prepare' ? <StandingNotes place={place} /> : <MainWindow />;
  renderInWindow(shown, request as never, (parts) => {
    runUnderWay(parts, [heatOffPrompt, overLimit], status);
  });
  return asked;
}

const answered = [
  { type: 'heat-off' },
  { type: 'alarm-acknowledged', alarm: 'plateau-departure' },
  { type: 'alarm-acknowledged', alarm: 'over-limit' },
];

afterEach(() => {
  cleanup();
  window.location.hash = '';
});

describe('a standing heat-off prompt', () => {
  for (const place of ['prepare', 'look-back'] as const) {
    test(`is seen and answered in ${place}, with the way to Watch`, async () => {
      const asked = show(place);
      const [bar] = screen.getAllByRole('alert');
      expect(bar?.textContent).toContain('Take the heat off and change the receiver.');
      expect(bar?.textContent).toContain('Called at 0:54:28, and 1 more.');
      fireEvent.click(within(bar!).getByRole('button', { name: 'Heat is off' }));
      await waitFor(() => expect(asked).toEqual(answered));
      fireEvent.click(within(bar!).getByRole('button', { name: 'Go to Watch' }));
      expect(window.location.hash).toBe('#watch');
    });
  }

  for (const opener of ['Cautions', 'Display and sound', 'Second screen', /^Volume$/, 'Stop …']) {
    test(`is answered inside the dialog that “${opener}” opens`, async () => {
      const asked = show('watch');
      fireEvent.click(screen.getAllByRole('button', { name: opener })[0]!);
      const dialog = within(screen.getByRole('dialog'));
      fireEvent.click(dialog.getByRole('button', { name: 'Heat is off' }));
      await waitFor(() => expect(asked).toEqual(answered));
      fireEvent.click(dialog.getByRole('button', { name: 'Go to Watch' }));
      expect(screen.queryByRole('dialog')).toBeNull();
    });
  }
});

test('a standing prompt does not take the keys meant for the field of a dialog', () => {
  show('watch');
  fireEvent.click(screen.getByRole('button', { name: /^Volume$/ }));
  expect(document.activeElement).toBe(screen.getByLabelText(/Volume in the receiver now/));
});

describe('what is wrong with the run under way', () => {
  const troubles = {
    'Advice has stopped': { ...recording, adviceStopped: 'a bug' },
    'Little room is left at /runs': {
      ...recording,
      problem: { kind: 'disk-full', path: '/runs' },
    },
    'Not being saved': {
      ...recording,
      state: 'failed',
      problem: { kind: 'folder-unavailable', path: '/runs', message: 'EIO' },
    },
  } as const satisfies Record<string, EventBody<'recording'>>;
  for (const [words, status] of Object.entries(troubles)) {
    test(`“${words}” is said in every place and in a dialog, and nothing beside it is green`, () => {
      for (const place of ['prepare', 'watch', 'look-back'] as const) {
        show(place, status);
        const said = () => screen.getAllByRole('alert').map(({ textContent }) => textContent);
        expect(said().join()).toContain(words);
        expect(document.querySelector('.saved[data-tone=good]')).toBeNull();
        const [cautions] = screen.queryAllByRole('button', { name: 'Cautions' });
        if (cautions) {
          fireEvent.click(cautions);
          expect(screen.getByRole('dialog').textContent).toContain(words);
        }
        cleanup();
      }
    });
  }

  test('that advice has stopped is said once on a screen, not twice in other words', () => {
    show('watch', troubles['Advice has stopped']);
    const said = document.body.textContent?.match(/advice has stopped|that judges the run/gi);
    expect(said).toHaveLength(1);
  });

  test('both troubles at once are both said', () => {
    const problem = { kind: 'disk-full', path: '/runs' } as const;
    show('look-back', { ...recording, problem, adviceStopped: 'a bug' });
    const said = screen.getAllByRole('alert').map(({ textContent }) => textContent?.slice(0, 12));
    expect(said).toEqual(['Advice has s', 'Little room ']);
  });
});

test('that readings found no room in the record is told for as long as the run goes on, after the disk takes them again too', () => {
  show('watch', { ...recording, lostReadings: 40 });
  const notes = screen.getAllByRole('alert').map(({ textContent }) => textContent);
  expect(notes.filter((note) => note?.startsWith('The record of this run has a gap'))).toHaveLength(
    1,
  );
});

test('that the folder of the runs is gone is told with and without a run, with the press that makes it anew', async () => {
  const problem = { kind: 'folder-gone', path: '/runs' } as const;
  const idle = { state: 'idle', runId: null, startedAtIso: null, savedToS: null } as const;
  for (const status of [
    { ...recording, state: 'failed', problem } as const,
    { ...idle, problem } as const,
  ]) {
    window.location.hash = 'watch';
    const asked: RequestName[] = [];
    const request = async (name: RequestName) => {
      asked.push(name);
      return { ok: true, value: {} } as never;
    };
    renderInWindow(<StandingNotes place="watch" />, request as never, (parts) => {
      runUnderWay(parts, [], status);
    });
    const note = screen.getByText(/The folder of the runs is gone: \/runs/);
    expect(note.textContent?.startsWith('Not being saved.')).toBe(status.state === 'failed');
    fireEvent.click(screen.getByRole('button', { name: 'Make the folder anew' }));
    await waitFor(() => expect(asked).toContain('folder/make-anew'));
    cleanup();
  }
});

test('a run that is over and not saved is named, with how much of it is and what to do, and stands beside the press that makes its folder anew', () => {
  const idle = { state: 'idle', runId: null, startedAtIso: null, savedToS: null } as const;
  const full = { kind: 'disk-full', path: '/runs' } as const;
  const gone = { kind: 'folder-gone', path: '/runs' } as const;
  const run = { runId: '20250314T101500Z', name: 'Pears', endedS: 3661, savedToS: 600 };
  const said = (status: Parameters<typeof runUnderWay>[2]) => {
    window.location.hash = 'look-back';
    renderInWindow(<StandingNotes place="look-back" />, (async () => ({})) as never, (parts) => {
      runUnderWay(parts, [], status);
    });
    const notes = screen.getAllByRole('alert').map(({ textContent }) => textContent);
    cleanup();
    return notes;
  };
  const onFullDisk = said({ ...idle, problem: null, notSaved: [{ ...run, problem: full }] });
  expect(onFullDisk).toEqual([
    expect.stringMatching(
      /^Not saved: the run “Pears” is over after 1:01:01, .* only 0:10:00 of it/,
    ),
  ]);
  expect(onFullDisk[0]).toContain('There is no room left at /runs');
  const withoutFolder = said({ ...idle, problem: gone, notSaved: [{ ...run, problem: gone }] });
  expect(withoutFolder).toEqual([
    expect.stringMatching(/what is not saved yet is then written there.*Make the folder anew$/),
    expect.stringMatching(/^Not saved: the run “Pears”.*once the folder is there\.$/),
  ]);
});
