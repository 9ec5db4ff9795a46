// @vitest-environment happy-dom
import { cleanup } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { StrengthAgainstShare } from '../../../renderer/figures/strength-against-share.tsx';
import { renderInWindow } from '../support/render-in-window.tsx';

afterEach(cleanup);

const points = [0, 0.25, 0.5, 0.75].map((share) => ({
  share,
  strengthAbv: { value: 92 - 8 * share, low: 90 - 10 * share, high: 94 - 6 * share },
}));

function drawn(reached: { value: number; low: number; high: number } | null) {
  const description = 'The more is collected, the weaker it gets.';
  const figure = { points, leastMeanAbv: 88, reached, description };
  const { container } = renderInWindow(<StrengthAgainstShare {...figure} />);
  const paper = container.querySelector('svg');
  return {
    description: paper?.getAttribute('aria-label'),
    lines: paper?.querySelectorAll('.curve:not([data-dashes])').length,
    intervals: paper?.querySelectorAll('.estimate-region').length,
    stop: [...(paper?.querySelectorAll('.plot-name') ?? [])].map(({ textContent }) => textContent),
    signs: paper?.querySelectorAll('.estimate-sign').length,
    text: container.innerHTML,
  };
}

test('a plan and a run draw strength against share alike; only a run has come to a point', () => {
  const { text: _, ...plan } = drawn(null);
  cleanup();
  const { text: __, ...run } = drawn({ value: 0.75, low: 0.7, high: 0.8 });
  const both = {
    description: 'The more is collected, the weaker it gets.',
    lines: 1,
    intervals: 1,
    stop: ['stop at 88 % vol on average'],
  };
  expect([plan, run]).toEqual([
    { ...both, signs: 0 },
    { ...both, signs: 1 },
  ]);
});
