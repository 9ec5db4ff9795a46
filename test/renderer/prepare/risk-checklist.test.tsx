// @vitest-environment happy-dom
import { cleanup, fireEvent, screen } from '@testing-library/react';
import { afterEach, expect, test, vi } from 'vitest';
import { cautionOf, cautionsAt } from '#shared-core';
import { RiskChecklist } from '../../../renderer/prepare/risk-checklist.tsx';
import { renderInWindow } from '../support/render-in-window.tsx';

afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
});

function paper(isCharged = false): string {
  renderInWindow(<RiskChecklist />, undefined, ({ prepare }) => {
    if (isCharged) prepare.getState().change({ assumed: [] });
  });
  fireEvent.click(screen.getByRole('button', { name: /Risk checklist/ }));
  return document.querySelector('body > .sheet-on-paper')?.textContent ?? '';
}

test('the paper has a box for every check of Prepare with its reason, and says every act for what is hot', () => {
  const text = paper();
  for (const { check, because } of cautionsAt('prepare'))
    expect(text).toContain(`${check}. ${because}`);
  const boxes = document.querySelectorAll('body > .sheet-on-paper .tick');
  expect(boxes).toHaveLength(cautionsAt('prepare').length);
  const acts = ['dryness', 'hot-head', 'drink', 'label', 'disposal'] as const;
  for (const id of acts) expect(text).toContain(cautionOf(id).act);
});

test('it puts the rules here first, is no safety device, and leaves names, dates and further measures to hand', () => {
  const text = paper(true);
  expect(text).toContain(cautionOf('permission').act);
  expect(text).toContain(cautionOf('no-safety-device').act);
  expect(text).toContain('which it does not replace');
  const lines = [...document.querySelectorAll('body > .sheet-on-paper .lines-to-fill li')].map(
    ({ textContent }) => textContent,
  );
  expect(lines).toEqual([
    'School and room',
    'Class',
    'Date',
    'ChargeDistillation: 350 mL of 9 % vol',
    '',
    '',
    'Prepared by',
    'Date and signature',
    'At the still',
    'Date and signature',
    'Seen by',
    'Date and signature',
  ]);
});

test('the sheet leaves the page with its dialog, so that nothing else is printed in its place', () => {
  paper();
  fireEvent.click(screen.getByRole('button', { name: 'Close' }));
  expect(document.querySelector('.sheet-on-paper')).toBe(null);
});

test('a charge that nobody has stated is left to be written by hand', () => {
  expect(paper()).toMatch(/ChargeDistillation: *Before heat/);
});
