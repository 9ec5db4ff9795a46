// @vitest-environment happy-dom
import { cleanup, fireEvent, render, screen } from '@testing-library/react';
import { afterEach, describe, expect, test } from 'vitest';
import { type AlarmView, alarmCatalogue, type RequestName } from '#shared-core';
import { createCommands } from '../../../renderer/parts/commands.ts';
import { type WindowParts, WindowPartsContext } from '../../../renderer/parts/stores-context.ts';
import {
  createBenchStore,
  createNoteDraftStore,
  createPreferencesStore,
  createRunViewStore,
} from '../../../renderer/stores/index.ts';
import { createPrepareStore } from '../../../renderer/stores/prepare-store.ts';
import { Prompts } from '../../../renderer/watch/prompts.tsx';
import { cautions } from '../../../shared-core/cautions/cautions.ts';
import { alarms } from '../../../shared-core/snapshot/alarm.ts';
import { factsOf } from '../../shared-core/monitor/words/facts.ts';
import { renderInWindow } from '../support/render-in-window.tsx';

const alarm = (changes: Partial<AlarmView>): AlarmView => ({
  alarm: 'plateau-departure',
  state: 'unacknowledged',
  priority: 'high',
  raisedS: 3268,
  act: 'Take the heat off and change the receiver.',
  because: 'The head is at 83.2 °C.',
  consequence: 'Water dilutes the product.',
  wouldChangeIf: 'The head falls back.',
  shelvedUntilS: null,
  ...changes,
});

function show(alarms: readonly AlarmView[], mayCommand = true, isTaken = false) {
  const asked: [RequestName, unknown][] = [];
  const service: WindowParts['service'] = {
    connection: () => 'open',
    onConnection: () => () => {},
    on: () => () => {},
    request: (async (name: RequestName, body: unknown) => {
      asked.push([name, body]);
      return isTaken
        ? { ok: true, value: { markId: 1 } }
        : { ok: false, error: { kind: 'disconnected' } };
    }) as WindowParts['service']['request'],
  };
  const bench = createBenchStore();
  bench.getState().dispatch({ type: 'connection', connection: 'open' });
  bench.getState().dispatch({
    type: 'app',
    app: {
      version: '1',
      modelVersion: '1',
      shell: 'loopback',
      platform: 'linux',
      runsFolder: '/runs',
      mayCommand,
      secondScreen: null,
    },
  });
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
  render(
    <WindowPartsContext value={parts}>
      <Prompts alarms={alarms} nowS={3300} isLive isCalm />
    </WindowPartsContext>,
  );
  return asked;
}

afterEach(cleanup);

describe('Prompts', () => {
  test('only an urgent alarm that nobody acknowledged is announced as an alert', () => {
    show([
      alarm({}),
      alarm({ alarm: 'over-limit', state: 'acknowledged', act: 'Take the heat off now.' }),
      alarm({ alarm: 'surging', priority: 'medium', act: 'Ease the heat.' }),
    ]);
    expect(
      screen.getAllByRole('alert').map((alert) => alert.querySelector('h2')?.textContent),
    ).toEqual(['Take the heat off and change the receiver.']);
  });

  test('what waits stands first, the urgent before the softer, the answered last', () => {
    show([
      alarm({ alarm: 'over-limit', state: 'acknowledged', act: 'Answered.' }),
      alarm({ alarm: 'surging', priority: 'medium', act: 'Softer.' }),
      alarm({ act: 'Urgent.' }),
    ]);
    const acts = screen.getAllByRole('heading').map(({ textContent }) => textContent);
    expect(acts).toEqual(['Urgent.', 'Also: Surging', 'Answered.']);
  });

  test('what is over is headed by what it was, asks for its answer and says no more what would have happened', () => {
    const asked = show([alarm({ state: 'returned-unacknowledged', act: null })]);
    expect(screen.getByRole('heading').textContent).toBe('Over: Heat off, change the receiver');
    expect(
      screen.getByText('Called at 0:54:28. It is no longer so, and nobody has answered.'),
    ).toBeTruthy();
    expect(document.body.textContent).not.toMatch(/dilutes|falls back/);
    fireEvent.click(screen.getByRole('button', { name: /^Acknowledge/ }));
    expect(asked).toEqual([
      ['run/mark', { mark: { type: 'alarm-acknowledged', alarm: 'plateau-departure' } }],
    ]);
  });

  test('a probe that is read again asks for plug and cable, and in none of its words for anybody’s eye', () => {
    const reads = factsOf({ dropouts: { count: 3, sinceS: 1500 } });
    const { act = null, because } = alarmCatalogue['probe-lost'].reason(reads);
    show([alarm({ alarm: 'probe-lost', act, because })]);
    expect(screen.getByRole('heading').textContent).toMatch(/^Check the plug/);
    expect(document.body.textContent).toContain('Vapour and hot glass burn.');
    expect(document.body.textContent).not.toMatch(/by eye|glass thermometer/);
  });

  test('once nothing is recorded any more, only what was never put right still stands', () => {
    renderInWindow(
      <Prompts
        alarms={[
          alarm({ act: 'Still so.' }),
          alarm({ alarm: 'attention', state: 'returned-unacknowledged', act: null }),
        ]}
        nowS={7200}
        isLive={false}
        isOver
        isCalm={false}
      />,
    );
    const acts = screen.getAllByRole('heading').map(({ textContent }) => textContent);
    expect(acts).toEqual(['Still so.']);
  });

  test('acknowledging makes a mark for that very alarm', () => {
    const asked = show([alarm({})]);
    fireEvent.click(screen.getByRole('button', { name: /^Acknowledge/ }));
    expect(asked).toEqual([
      ['run/mark', { mark: { type: 'alarm-acknowledged', alarm: 'plateau-departure' } }],
    ]);
  });

  test('saying that the heat is off marks it and answers the prompt that asked for it', async () => {
    const asked = show([alarm({})], true, true);
    fireEvent.click(screen.getByRole('button', { name: /^Heat is off/ }));
    await new Promise((done) => setTimeout(done));
    expect(asked).toEqual([
      ['run/mark', { mark: { type: 'heat-off' } }],
      ['run/mark', { mark: { type: 'alarm-acknowledged', alarm: 'plateau-departure' } }],
    ]);
  });

  test('saying that one is at the still answers the check with one press', async () => {
    const asked = show([alarm({ alarm: 'attention', priority: 'medium' })], true, true);
    fireEvent.click(screen.getByRole('button', { name: 'I am at the still' }));
    await new Promise((done) => setTimeout(done));
    expect(asked).toEqual([
      ['run/mark', { mark: { type: 'attention-answered' } }],
      ['run/mark', { mark: { type: 'alarm-acknowledged', alarm: 'attention' } }],
    ]);
  });

  test('what may not be put aside offers no button for it', () => {
    show([alarm({ alarm: 'near-dryness' }), alarm({ alarm: 'surging', priority: 'medium' })]);
    const [first, folded] = screen.getAllByRole('listitem');
    const asides = [first, folded].map((item) =>
      Array.from(item?.querySelectorAll('button') ?? []).filter(({ textContent }) =>
        textContent?.includes('Not for 5 min'),
      ),
    );
    expect(asides.map(({ length }) => length)).toEqual([0, 1]);
  });

  test('the button that puts a prompt aside says for how long it asks', () => {
    const asked = show([alarm({ alarm: 'surging', priority: 'medium' })]);
    const button = screen.getByRole('button', { name: /^Not for / });
    fireEvent.click(button);
    const minutes = Number(/^Not for (\d+) min$/.exec(button.textContent ?? '')?.[1]);
    expect(asked).toEqual([
      ['run/mark', { mark: { type: 'alarm-shelved', alarm: 'surging', forS: minutes * 60 } }],
    ]);
  });

  test('heat that could not be marked as off leaves the prompt open', async () => {
    const asked = show([alarm({})]);
    fireEvent.click(screen.getByRole('button', { name: /^Heat is off/ }));
    await new Promise((done) => setTimeout(done));
    expect(asked).toEqual([['run/mark', { mark: { type: 'heat-off' } }]]);
  });

  test('the limit passed while the plateau ends is the newer reason of one prompt, and one press answers both', async () => {
    const asked = show(
      [
        alarm({
          alarm: 'over-limit',
          raisedS: 3325,
          act: 'Take the heat off now.',
          because: 'The head is at 83.8 °C.',
        }),
        alarm({ because: 'The head is at 82.8 °C.' }),
      ],
      true,
      true,
    );
    expect(screen.getAllByRole('heading').map(({ textContent }) => textContent)).toEqual([
      'Take the heat off and change the receiver.',
    ]);
    expect(screen.getByText('Act now. Called at 0:55:25, when this was so:')).toBeTruthy();
    expect(screen.getByText('The head is at 83.8 °C.')).toBeTruthy();
    expect(screen.getByText('First called at 0:54:28: The head is at 82.8 °C.')).toBeTruthy();
    fireEvent.click(screen.getByRole('button', { name: /^Heat is off/ }));
    await new Promise((done) => setTimeout(done));
    expect(asked).toEqual([
      ['run/mark', { mark: { type: 'heat-off' } }],
      ['run/mark', { mark: { type: 'alarm-acknowledged', alarm: 'plateau-departure' } }],
      ['run/mark', { mark: { type: 'alarm-acknowledged', alarm: 'over-limit' } }],
    ]);
  });

  test('what asks for more than the heat off is not said in another prompt, but waits in a line with all its buttons', () => {
    show([
      alarm({}),
      alarm({ alarm: 'condenser-warm', act: 'Restore the cooling water.' }),
      alarm({ alarm: 'attention', priority: 'medium', act: 'Go to the still.' }),
    ]);
    expect(screen.getAllByRole('heading').map(({ textContent }) => textContent)).toEqual([
      'Restore the cooling water.',
      'Also: Heat off, change the receiver',
      'Also: Nobody answered',
    ]);
    const lines = [...document.querySelectorAll('details:has(h2)')];
    expect(lines.map((line) => line.querySelectorAll('button').length)).toEqual([3, 1]);
  });

  test('beside an instruction it is not said that nothing asks for an act', () => {
    renderInWindow(
      <>
        <Prompts alarms={[]} nowS={1} isLive isCalm={false} />
        <Prompts alarms={[]} nowS={1} isLive isCalm />
      </>,
    );
    expect(screen.getAllByText('Keep watching the glass.')).toHaveLength(1);
  });

  test('an answered prompt gives its reason as that of the moment it was called', () => {
    show([alarm({ state: 'acknowledged' })]);
    expect(screen.getByText('At 0:54:28 this was so: The head is at 83.2 °C.')).toBeTruthy();
  });

  test('only what asks for the heat to be off offers to say so', () => {
    show([alarm({ alarm: 'surging', priority: 'medium', act: 'Ease the heat.' })]);
    expect(screen.queryByRole('button', { name: /^Heat is off/ })).toBeNull();
  });

  test.each([
    ['surging', true],
    ['over-limit', true],
    ['near-dryness', false],
    ['condenser-warm', false],
    ['attention', false],
  ] as const)('“Not for 5 min” is offered where waiting hurts nobody: %s', (name, isOffered) => {
    show([alarm({ alarm: name })]);
    expect(screen.queryByRole('button', { name: /^Not for 5 min/ }) !== null).toBe(isOffered);
  });

  test.each(alarms)('how its act is done without being hurt stands with it: %s', (name) => {
    show([alarm({ alarm: name })]);
    const { caution } = alarmCatalogue[name];
    const said = cautions.filter(({ because }) => screen.queryByText(because) !== null);
    expect(said.map(({ id }) => id)).toEqual(caution === null ? [] : [caution]);
  });

  test('without a prompt it goes on asking for eyes on the glass: no all-clear', () => {
    show([]);
    expect(screen.getByRole('region', { name: 'Prompts' }).textContent).toBe(
      'Keep watching the glass.',
    );
  });

  test('a window that may only look has nothing to press', () => {
    show([alarm({})], false);
    expect(screen.queryAllByRole('button')).toEqual([]);
  });
});

test('“when this was so:” is followed by what was so, and by nothing else', () => {
  show([alarm({})]);
  const state = document.querySelector('.prompt-state');
  expect([
    state?.textContent?.endsWith('when this was so:'),
    state?.nextElementSibling?.textContent?.replaceAll('\u00a0', ' '),
  ]).toEqual([true, 'The head is at 83.2 °C.']);
});
