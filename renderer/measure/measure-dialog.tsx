import { type MarkBody, say } from '#shared-core';
import { Dialog } from '../design/index.ts';
import { MeasureForm } from './measure-form.tsx';

interface MeasureDialogProps {
  readonly cuts: number;
  readonly chargeMl: number;
  readonly onMark: (mark: MarkBody) => void;
  readonly onClose: () => void;
}

/** Takes a measurement of a liquid while the run goes on. */
export function MeasureDialog({ cuts, chargeMl, onMark, onClose }: MeasureDialogProps) {
  return (
    <Dialog title={say('Measured')} onClose={onClose}>
      <MeasureForm canAct cuts={cuts} chargeMl={chargeMl} onMark={onMark} onCancel={onClose} />
    </Dialog>
  );
}
