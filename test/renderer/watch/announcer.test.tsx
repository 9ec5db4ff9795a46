// @vitest-environment happy-dom
import { cleanup, screen } from '@testing-library/react';
import { afterEach, describe, expect, test } from 'vitest';
import { type AlarmView, createMonitor, defaultRunSettings, type Mark } from '#shared-core';
import type { RunView } from '../../../renderer/stores/index.ts';
import { Announcer } from '../../../renderer/watch/announcer.tsx';
import { Findings } from '../../../renderer/watch/findings.tsx';
import { MarkBar } from '../../../renderer/watch/mark-bar.tsx';
import { Prompts } from '../../../renderer/watch/prompts.tsx';
import { plainSnapshot } from '../../support/plain-snapshot.ts';
import { renderInWindow } from '../support/render-in-window.tsx';
import { runUnderWay } from '../support/running-run.ts';

afterEach(cleanup);

interface LateProps {
  readonly view: () => RunView | null;
  readonly element: (view: RunView) => React.ReactElement;
}

/** Drawn once the stores hold the run. */
function Late({ view, element }: LateProps) {
  const known = view();
  return known && element(known);
}

/** A window with a run under way, and the view it shows. */
function underWay(
  element: (view: RunView) => React.ReactElement,
  change: Partial<RunView> = {},
  markKeys = true,
) {
  let view: RunView | null = null;
  return renderInWindow(<Late view={() => view} element={element} />, undefined, (parts) => {
    runUnderWay(parts);
    parts.preferences.getState().set({ markKeys });
    const known = parts.live.getState().view;
    view = known && { ...known, ...change };
  });
}

const snapshot = plainSnapshot(createMonitor(defaultRunSettings).advanceTo(4000));
const mark = (timeS: number, markId: number, body: Mark['mark']): Mark => ({
  kind: 'mark',
  timeS,
  markId,
  mark: body,
});

const said = (name: string) => screen.getByRole('status', { name }).textContent;

describe('for one who can’t see', () => {
  test('what is to be done is told whenever it changes, also that nothing is', () => {
    const tell = (act: string | null) => {
      underWay((view) => <Announcer view={view} liveness="live" hasAlerts />, {
        snapshot: { ...snapshot, act },
      });
      const words = said('What to do');
      cleanup();
      return words;
    };
    expect([tell('Ease the heat.'), tell(null), tell('Take the heat off.')]).toEqual([
      'Ease the heat.',
      'Keep watching the glass.',
      'Take the heat off.',
    ]);
  });

  test('what happened is told with its moment, for the head stands elsewhere by then', () => {
    const event = {
      event: 'plateau-ending',
      timeS: 2568,
      because: 'The head is at 79.5 °C.',
    } as const;
    underWay((view) => <Announcer view={view} liveness="live" hasAlerts />, {
      snapshot: { ...snapshot, events: [event] },
    });
    expect(document.body.textContent).toMatch(/At 0:42:48 this was so: The head is at 79\.5\s°C\./);
  });

  test.each([
    ['unacknowledged', 1],
    ['acknowledged', 0],
    ['shelved', 0],
  ] as const)('what an urgent prompt asks for is told by the prompt alone: %s', (state, alerts) => {
    const act = 'Take the heat off.';
    const alarm: AlarmView = {
      alarm: 'plateau-departure',
      state,
      priority: 'high',
      raisedS: 3900,
      act,
      because: 'The head climbs.',
      consequence: 'Water comes over.',
      wouldChangeIf: 'The head falls back.',
      shelvedUntilS: null,
    };
    underWay(
      (view) => (
        <>
          <Announcer view={view} liveness="live" hasAlerts />
          <Prompts alarms={[alarm]} nowS={4000} isLive isCalm={false} />
        </>
      ),
      { snapshot: { ...snapshot, act, alarms: [alarm] } },
    );
    const heard = [...screen.queryAllByRole('status'), ...screen.queryAllByRole('alert')];
    expect(heard.filter(({ textContent }) => textContent?.includes(act))).toHaveLength(alerts);
  });

  test('where no prompt is shown, as on the second screen, an urgent act is told all the same', () => {
    const act = 'Take the heat off.';
    const alarms = [{ priority: 'high', state: 'unacknowledged', act }] as const;
    underWay((view) => <Announcer view={view} liveness="live" hasAlerts={false} />, {
      snapshot: { ...snapshot, act, alarms: alarms as unknown as typeof snapshot.alarms },
    });
    expect(said('What to do')).toBe(act);
  });

  test('what a prompt that is not urgent asks for is told as what to do', () => {
    const act = 'Count the drops.';
    const alarms = [{ priority: 'medium', state: 'unacknowledged', act }] as const;
    underWay((view) => <Announcer view={view} liveness="live" hasAlerts />, {
      snapshot: { ...snapshot, act, alarms: alarms as unknown as typeof snapshot.alarms },
    });
    expect(said('What to do')).toBe(act);
  });

  test('a run that is over or not judged asks for nothing', () => {
    underWay((view) => <Announcer view={view} liveness="ended" hasAlerts />, {
      snapshot: { ...snapshot, act: 'Take the heat off.' },
    });
    expect(said('What to do')).toBe('');
  });

  test('a mark is told as noted, with its time; an answer to a prompt is not', () => {
    underWay((view) => <Announcer view={view} liveness="live" hasAlerts />, {
      marks: [
        mark(12, 1, { type: 'heat-on' }),
        mark(21, 2, { type: 'attention-answered' }),
        mark(22, 3, { type: 'alarm-acknowledged', alarm: 'attention' }),
      ],
    });
    expect(said('Noted')).toBe('Noted 0:00:21: At the still');
  });

  test('every button of the marks has a name of its own, and says its key', () => {
    underWay((view) => <MarkBar view={view} />);
    const keys = screen
      .getAllByRole('button')
      .map((button) => [
        button.getAttribute('aria-keyshortcuts'),
        button.getAttribute('aria-label') ?? button.textContent?.replace(/^[a-z](?=[A-Z])/, ''),
      ]);
    expect(keys).toEqual([
      ['h', 'Heat on'],
      ['e', 'Heat eased'],
      ['o', 'Heat off'],
      ['r', 'Receiver changed'],
      ['v', 'Volume'],
      ['d', 'Drops'],
      ['m', 'Measured'],
      ['n', 'Note'],
      ['a', 'At the still'],
      ['u', 'Undo'],
    ]);
  });

  test('keys that are switched off are not told', () => {
    underWay((view) => <MarkBar view={view} />, {}, false);
    expect(document.querySelectorAll('[aria-keyshortcuts]')).toHaveLength(0);
  });

  test('each “Why?” says of what', () => {
    renderInWindow(<Findings snapshot={snapshot} />);
    const names = [...document.querySelectorAll('summary')].map((summary) =>
      summary.getAttribute('aria-label'),
    );
    expect(names[0]).toBe('Why? Stage');
    expect(new Set(names).size).toBe(names.length);
  });
});
