import { useState } from 'react';
import { Button } from '../design/index.ts';
import { FermentPlanDialog } from './ferment-plan-dialog.tsx';

/** Opens the plan of the week before. */
export function PlanFermentButton() {
  const [isOpen, setOpen] = useState(false);
  return (
    <div className="field-wide">
      <Button onClick={() => setOpen(true)}>Plan the ferment</Button>
      {isOpen && <FermentPlanDialog onClose={() => setOpen(false)} />}
    </div>
  );
}
