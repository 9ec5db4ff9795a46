import { useState } from 'react';
import { type StatedFerment, say } from '#shared-core';
import { Button } from '../design/index.ts';
import { FermentLogDialog } from './ferment-log-dialog.tsx';
import { FermentPlanDialog } from './ferment-plan-dialog.tsx';

type Open =
  | { readonly kind: 'nothing' }
  | { readonly kind: 'plan' }
  | { readonly kind: 'log'; readonly planned: Omit<StatedFerment, 'beganAtIso'> | null };

/** The week before: its plan and its log. */
export function FermentButtons() {
  const [open, setOpen] = useState<Open>({ kind: 'nothing' });
  const close = () => setOpen({ kind: 'nothing' });
  return (
    <div className="field-wide ferment-buttons">
      <Button onClick={() => setOpen({ kind: 'plan' })}>{say('Plan the ferment')}</Button>
      <Button onClick={() => setOpen({ kind: 'log', planned: null })}>{say('Ferment log')}</Button>
      {open.kind === 'plan' && (
        <FermentPlanDialog
          onClose={close}
          onBegin={(planned) => setOpen({ kind: 'log', planned })}
        />
      )}
      {open.kind === 'log' && <FermentLogDialog planned={open.planned} onClose={close} />}
    </div>
  );
}
