// @vitest-environment happy-dom
import { act, cleanup, screen } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { ProblemReportPage } from '../../../renderer/help/problem-report-page.tsx';
import type { WindowParts } from '../../../renderer/parts/stores-context.ts';
import { renderInWindow } from '../support/render-in-window.tsx';

type Request = WindowParts['service']['request'];
type Answer = Awaited<ReturnType<Request>>;

afterEach(cleanup);

test('until a report is there it is said that it is being made, and no empty box stands for it', async () => {
  let answer: (given: Answer) => void = () => {};
  const asked = new Promise<Answer>((resolve) => {
    answer = resolve;
  });
  const { container } = renderInWindow(<ProblemReportPage />, (async () => asked) as Request);
  const shown = () => [screen.getByRole('status').textContent, container.querySelector('pre')];
  expect(shown()).toEqual(['Putting the report together …', null]);
  await act(async () => answer({ ok: false, error: { kind: 'disconnected' } }));
  expect(shown()).toEqual(['', null]);
  expect(screen.getByRole('alert')).toBeTruthy();
});
