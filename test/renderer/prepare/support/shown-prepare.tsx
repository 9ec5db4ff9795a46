import type { ReactNode } from 'react';
import type { RequestName } from '#shared-core';
import type { WindowParts } from '../../../../renderer/parts/stores-context.ts';
import { safetyLooks } from '../../../../renderer/prepare/safety-checks.ts';
import { StartPanel } from '../../../../renderer/prepare/start-panel.tsx';
import { StepBar } from '../../../../renderer/prepare/step-bar.tsx';
import type { firstDraft } from '../../../../renderer/stores/prepare-draft.ts';
import { heardProbe } from '../../support/heard-probe.ts';
import { renderInWindow } from '../../support/render-in-window.tsx';

/** All looks before heat, made. */
export const looksMade = safetyLooks.flatMap(({ checks }) =>
  checks.map(({ id }) => ({ check: id, role: 'teacher' as const })),
);

/** Parts of Prepare between its steps and its start, over a draft and a probe that is heard; what is started, and the draft as it stands. */
export function showPrepare(sections: ReactNode, draft: typeof firstDraft) {
  const started: unknown[] = [];
  const got: WindowParts[] = [];
  const request = async (name: RequestName, body: unknown) => {
    if (name === 'run/start') started.push(body);
    return { ok: true, value: { runId: 'r1' } } as never;
  };
  renderInWindow(
    <>
      <StepBar />
      {sections}
      <StartPanel canAct />
    </>,
    request as never,
    (parts) => {
      got.push(parts);
      parts.bench.getState().dispatch({ type: 'probe', probe: heardProbe });
      parts.prepare.getState().replace(draft);
    },
  );
  return { started, draft: () => got[0]?.prepare.getState().draft };
}
