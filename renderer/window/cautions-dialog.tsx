import { Button, Dialog } from '../design/index.ts';
import { cautions } from './cautions.ts';

export function CautionsDialog({ onClose }: { readonly onClose: () => void }) {
  return (
    <Dialog title="Cautions" onClose={onClose}>
      <ul className="cautions">
        {cautions.map(({ act, reason }) => (
          <li key={act}>
            <strong>{act}</strong> {reason}
          </li>
        ))}
      </ul>
      <div className="dialog-acts">
        <Button weight="main" onClick={onClose}>
          Back
        </Button>
      </div>
    </Dialog>
  );
}
