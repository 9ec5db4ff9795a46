import { type RunSummary, say } from '#shared-core';
import { Button, Dialog } from '../design/index.ts';
import { useWindowParts } from '../parts/index.ts';

interface TrashDialogProps {
  readonly run: RunSummary;
  readonly onClose: (hasChanged: boolean) => void;
}

export function TrashDialog({ run, onClose }: TrashDialogProps) {
  const { commands } = useWindowParts();
  const remove = async () => {
    onClose((await commands.ask('runs/trash', { runId: run.runId })) !== null);
  };
  return (
    <Dialog title={say('Remove this run?')} onClose={() => onClose(false)}>
      <p>
        {say(
          '“{name}” leaves the library. Nothing is deleted: it lies under “Removed runs” at the end of the list and can be put back from there.',
          { name: run.name },
        )}
      </p>
      <div className="dialog-acts">
        <Button onClick={() => onClose(false)}>{say('Keep it')}</Button>
        <Button weight="act" onClick={() => void remove()}>
          {say('Remove from the library')}
        </Button>
      </div>
    </Dialog>
  );
}
