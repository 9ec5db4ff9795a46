import { cautionGroups, commonPractice, say, told } from '#shared-core';
import { Button, Dialog } from '../design/index.ts';
import { CautionLines } from './caution-lines.tsx';

interface CautionsDialogProps {
  readonly onClose: () => void;
  /** What leads out of it: back where one was, unless it opened by itself. */
  readonly closeWords?: string;
}

/** What can hurt people, all of it, reachable from every place. */
export function CautionsDialog({ onClose, closeWords = say('Back') }: CautionsDialogProps) {
  return (
    <Dialog title={say('Cautions')} onClose={onClose}>
      <div className="cautions-page">
        {cautionGroups.map(({ title, cautions }) => (
          <section key={title}>
            <h3>{told(title)}</h3>
            <CautionLines cautions={cautions} />
          </section>
        ))}
      </div>
      <p className="small soft">{told(commonPractice)}</p>
      <div className="dialog-acts">
        <Button weight="main" onClick={onClose}>
          {closeWords}
        </Button>
      </div>
    </Dialog>
  );
}
