// @vitest-environment happy-dom
import { cleanup, fireEvent, screen } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { type BeginDraft, beginDraft } from '../../../renderer/ferment/begin-draft.ts';
import { StatedFields } from '../../../renderer/ferment/stated-fields.tsx';
import { renderInWindow } from '../support/render-in-window.tsx';

afterEach(cleanup);

function shown(draft: BeginDraft, now: Date, onDraft = (_: BeginDraft) => {}): HTMLInputElement {
  cleanup();
  renderInWindow(
    <StatedFields
      draft={draft}
      problems={{}}
      knownSugarG={null}
      beganAtIso={now.toISOString()}
      onDraft={onDraft}
    />,
  );
  return screen.getByLabelText<HTMLInputElement>('The yeast went in');
}

test('the moment at which the yeast went in follows the clock until somebody types one', () => {
  const eight = new Date(2026, 4, 1, 8, 0, 5);
  const later = new Date(2026, 4, 1, 8, 41, 5);
  let draft = beginDraft(null);
  expect(shown(draft, eight).value).toBe('2026-05-01T08:00');
  const field = shown(draft, later, (typed) => {
    draft = typed;
  });
  expect(field.value).toBe('2026-05-01T08:41');
  fireEvent.change(field, { target: { value: '2026-05-01T07:30' } });
  expect(shown(draft, later).value).toBe('2026-05-01T07:30');
});
