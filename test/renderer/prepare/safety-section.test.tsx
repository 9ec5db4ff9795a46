// @vitest-environment happy-dom
import { cleanup, fireEvent, screen } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { cautionsAt } from '#shared-core';
import type { WindowParts } from '../../../renderer/parts/stores-context.ts';
import { looksLeft, safetyLooks } from '../../../renderer/prepare/safety-checks.ts';
import { SafetySection } from '../../../renderer/prepare/safety-section.tsx';
import { renderInWindow } from '../support/render-in-window.tsx';

afterEach(cleanup);

test('the seven looks hold each caution that is confirmed before heat once, and no other', () => {
  const looked = safetyLooks.flatMap(({ checks }) => checks.map(({ id }) => id));
  const asked = cautionsAt('prepare').map(({ id }) => id);
  expect([safetyLooks.length, [...looked].sort()]).toEqual([7, [...asked].sort()]);
});

test('Prepare says every check of a look with its reason', () => {
  renderInWindow(<SafetySection />);
  const shown = [...document.querySelectorAll('.checks li')].map(({ textContent }) => textContent);
  expect(shown).toEqual(
    safetyLooks.map(({ title, checks }) => {
      const lines = checks.map(({ check }) => check).join('');
      return `${title}${lines}Why?${checks.map(({ because }) => because).join('')}`;
    }),
  );
});

test('one press confirms what one look holds, each check of it by itself in the record, and takes it back', () => {
  let parts: WindowParts | undefined;
  renderInWindow(<SafetySection />, undefined, (made) => {
    parts = made;
  });
  const confirmed = () => parts?.prepare.getState().draft.confirms ?? [];
  const pot = screen.getByRole('checkbox', { name: /^The pot/ });
  fireEvent.click(pot);
  expect(confirmed().map(({ check, role }) => [check, role])).toEqual([
    ['fill', 'teacher'],
    ['boiling-stones', 'teacher'],
  ]);
  expect(looksLeft(confirmed()).map(({ title }) => title)).not.toContain('The pot');
  expect(looksLeft(confirmed().slice(1)).map(({ title }) => title)).toContain('The pot');
  fireEvent.click(pot);
  expect(confirmed()).toEqual([]);
});
