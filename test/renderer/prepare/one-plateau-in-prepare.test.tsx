// @vitest-environment happy-dom
import { cleanup, screen } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { Expectation } from '../../../renderer/prepare/expectation.tsx';
import { firstDraft } from '../../../renderer/stores/prepare-draft.ts';
import { renderInWindow } from '../support/render-in-window.tsx';

afterEach(cleanup);

test('between which ends the plateau lies is not told under the name of where it is expected', () => {
  renderInWindow(<Expectation />, undefined, ({ prepare }) =>
    prepare.getState().replace({ ...firstDraft, altitudeM: '540' }),
  );
  // Azeotrope and limit; the course that is simulated beside them names a narrower range of its own.
  expect(screen.getByText('The plateau lies between').nextSibling?.textContent).toMatch(
    /^76\.5–81\.9/,
  );
  expect(document.body.textContent).not.toContain('Plateau at');
});
