// @vitest-environment happy-dom
import { cleanup } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import type { RunView } from '../../../renderer/stores/index.ts';
import { StripInWords } from '../../../renderer/strip/strip-in-words.tsx';
import { renderInWindow } from '../support/render-in-window.tsx';

afterEach(cleanup);

const stages = [
  { stage: 'tail', fromS: 3600, toS: 5400 },
  { stage: 'cool-down', fromS: 5400, toS: null },
] as const;

function lines(endedS: number | null) {
  const view = { stages, marks: [], doubtful: [], endedS } as unknown as RunView;
  const { container } = renderInWindow(<StripInWords view={view} />);
  return [...container.querySelectorAll('li')].map(({ textContent }) => textContent);
}

test('the last stage lasts while the run does, and to its end once it has ended', () => {
  expect(lines(null)[1]).toBe('Cool-down from 1:30:00, lasting');
  expect(lines(7000)).toEqual([
    'Water-rich tail from 1:00:00 to 1:30:00',
    'Cool-down from 1:30:00 to the end',
  ]);
});
