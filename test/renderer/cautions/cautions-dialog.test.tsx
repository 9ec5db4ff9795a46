// @vitest-environment happy-dom
import { cleanup, screen } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { type Caution, cautionGroups, cautionWords } from '#shared-core';
import { CautionsDialog } from '../../../renderer/cautions/cautions-dialog.tsx';
import { cautions } from '../../../shared-core/cautions/cautions.ts';
import { renderInWindow } from '../support/render-in-window.tsx';

afterEach(cleanup);

test('the Cautions page says every caution of the list under its heading, and no other', () => {
  renderInWindow(<CautionsDialog onClose={() => {}} />);
  const list: readonly Caution[] = cautions;
  const shown = (selector: string) =>
    [...document.querySelectorAll(`dialog ${selector}`)].map(({ textContent }) => textContent);
  expect(shown('h3')).toEqual(cautionGroups.map(({ title }) => title));
  expect(shown('li')).toEqual(
    list.map((caution) =>
      caution.source === undefined
        ? cautionWords(caution)
        : `${cautionWords(caution)} Source: ${caution.source}.`,
    ),
  );
  expect(screen.getByRole('button', { name: 'Back' })).toBeTruthy();
});
