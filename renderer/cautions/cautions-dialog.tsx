import { cautionGroups, commonPractice } from '#shared-core';
import { Button, Dialog } from '../design/index.ts';
import { CautionLines } from './caution-lines.tsx';

/** What can hurt people, all of it, reachable from every place. */
export function CautionsDialog({ onClose }: { readonly onClose: () => void }) {
  return (
    <Dialog title="Cautions" onClose={onClose}>
      <div className="cautions-page">
        {cautionGroups.map(({ title, cautions }) => (
          <section key={title}>
            <h3>{title}</h3>
            <CautionLines cautions={cautions} />
          </section>
        ))}
      </div>
      <p className="small soft">{commonPractice}</p>
      <div className="dialog-acts">
        <Button weight="main" onClick={onClose}>
          Back
        </Button>
      </div>
    </Dialog>
  );
}
