// @vitest-environment happy-dom
import { cleanup, fireEvent, screen, waitFor } from '@testing-library/react';
import { afterEach, describe, expect, test } from 'vitest';
import { type LessonScript, type RequestAnswer, setUpSchema, stages } from '#shared-core';
import { defaultScript } from '../../../renderer/lesson-script/default-script.ts';
import { ForTheClass } from '../../../renderer/lesson-script/for-the-class.tsx';
import { LessonScriptButton } from '../../../renderer/lesson-script/lesson-script-button.tsx';
import type { WindowParts } from '../../../renderer/parts/stores-context.ts';
import { draftFromSetUp } from '../../../renderer/prepare/draft-from-set-up.ts';
import { setUpFromDraft } from '../../../renderer/prepare/set-up-from-draft.ts';
import { firstDraft } from '../../../renderer/stores/prepare-draft.ts';
import { keptDraft, restoredDraft } from '../../../renderer/stores/prepare-memory.ts';
import { renderInWindow } from '../support/render-in-window.tsx';
import { recording } from '../support/running-run.ts';

type KnownRigs = RequestAnswer<'rigs/list'>;

afterEach(cleanup);

const own: LessonScript = {
  ...defaultScript,
  'main-fraction': { show: '', ask: 'Why is the line level?', predict: 'When will it end?' },
};
const charge = { volumeMl: 350, strengthAbv: 9 };
const keptRigs: KnownRigs = {
  last: {
    keptAtIso: '2026-01-01T09:00:00.000Z',
    setUp: setUpSchema.parse({ name: 'Pear', charge, lessonScript: own }),
  },
  rigs: [],
  hasRehearsed: true,
};

function show(
  element: React.ReactElement,
  mayCommand: boolean,
  fill: (parts: WindowParts) => void = () => {},
) {
  let parts: WindowParts | undefined;
  const asked: string[] = [];
  const request = async (name: string) => {
    asked.push(name);
    return { ok: true, value: keptRigs } as never;
  };
  renderInWindow(element, request as never, (made) => {
    parts = made;
    const { dispatch } = made.bench.getState();
    dispatch({ type: 'connection', connection: 'open' });
    const app = {
      version: '1',
      modelVersion: '1',
      shell: 'loopback',
      platform: 'linux',
      runsFolder: '/runs',
      mayCommand,
      secondScreen: null,
    } as const;
    dispatch({ type: 'app', app });
    fill(made);
  });
  return { asked, draft: () => parts?.prepare.getState().draft };
}

describe('the script of a lesson', () => {
  test('is written for every stage by the program’s own text, so that nobody begins with nothing', () => {
    const empty = stages.filter((stage) =>
      Object.values(defaultScript[stage]).some((text) => text.trim() === ''),
    );
    expect(empty).toEqual([]);
  });

  test('is one folded line of the present stage in Watch: what to ask, else what there is', () => {
    show(<ForTheClass stage="main-fraction" />, true, ({ prepare }) => {
      prepare.getState().change({ lessonScript: own });
    });
    const folded = document.querySelector('details');
    expect(folded?.open).toBe(false);
    expect(folded?.querySelector('summary')?.textContent).toBe(
      'For the class: Why is the line level?',
    );
    cleanup();
    show(<ForTheClass stage="tail" />, true, ({ prepare }) => {
      const nothing = { show: ' ', ask: '', predict: '' };
      prepare.getState().change({ lessonScript: { ...own, tail: nothing } });
    });
    screen.getByText('nothing is written for this stage');
  });

  test('is not in a window for the class', () => {
    const { asked } = show(<ForTheClass stage="main-fraction" />, false);
    expect([document.body.textContent, asked]).toEqual(['', []]);
  });

  test('comes back with the set-up where a run under way is opened in a new window', async () => {
    show(<ForTheClass stage="main-fraction" />, true, ({ bench }) => {
      bench.getState().dispatch({ type: 'recording', recording });
    });
    await screen.findByText('Why is the line level?', { selector: '.for-the-class-first' });
  });

  test('is written over, kept with the set-up and filled in from it; the given text comes back by one press', async () => {
    const { draft } = show(<LessonScriptButton />, true);
    fireEvent.click(screen.getByRole('button', { name: 'Lesson script …' }));
    const field = screen.getAllByLabelText<HTMLTextAreaElement>('Ask')[2];
    if (field === undefined) throw new Error('no field for the main fraction');
    fireEvent.change(field, { target: { value: 'What holds it there?' } });
    const written = draft();
    expect(written?.lessonScript?.['main-fraction'].ask).toBe('What holds it there?');
    await waitFor(() =>
      expect(document.querySelector('body > .sheet-on-paper')?.textContent).toContain(
        'What holds it there?',
      ),
    );
    if (written === undefined) throw new Error('no draft');
    expect(restoredDraft(keptDraft(written))?.lessonScript).toEqual(written.lessonScript);
    const kept = setUpFromDraft(written, null);
    if (!kept.ok) throw new Error(JSON.stringify(kept.error));
    const told = setUpSchema.parse(JSON.parse(JSON.stringify(kept.value)));
    expect(draftFromSetUp(told, firstDraft, '.').lessonScript).toEqual(written.lessonScript);
    fireEvent.click(screen.getByRole('button', { name: 'Back to the given text' }));
    expect(draft()?.lessonScript).toEqual(defaultScript);
  });

  test('is the given text in a set-up kept before there were scripts', () => {
    const old = setUpSchema.parse({ name: 'Pear', charge });
    expect(draftFromSetUp(old, firstDraft, '.').lessonScript).toBe(null);
  });
});
