// @vitest-environment happy-dom
import { cleanup } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { cautionsAt } from '#shared-core';
import { SafetySection } from '../../../renderer/prepare/safety-section.tsx';
import { renderInWindow } from '../support/render-in-window.tsx';

afterEach(cleanup);

test('Prepare asks for the cautions of the list that are confirmed before heat, and for no other', () => {
  renderInWindow(<SafetySection />);
  const asked = [...document.querySelectorAll('.checks li')].map(({ textContent }) => textContent);
  expect(asked).toEqual(cautionsAt('prepare').map(({ check, because }) => `${check}${because}`));
});
