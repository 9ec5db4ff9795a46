import { Button, Dialog } from '../design/index.ts';
import { useWindowParts } from '../parts/index.ts';
import type { RunView } from '../stores/index.ts';

interface StopDialogProps {
  readonly view: RunView;
  readonly onClose: () => void;
}

export function StopDialog({ view, onClose }: StopDialogProps) {
  const { commands } = useWindowParts();
  const isHeatOff = view.snapshot?.heat === 'off';
  return (
    <Dialog title="Stop recording?" onClose={onClose}>
      <p>
        Prompts end with the recording. The run stays in the library, where it can be replayed and
        exported.
      </p>
      {!isHeatOff && (
        <p className="warning">
          No “Heat off” was marked. This program does not control the heat: is it off at the still?
        </p>
      )}
      <div className="dialog-acts">
        <Button onClick={onClose}>Go on recording</Button>
        <Button
          weight="act"
          onClick={() => {
            onClose();
            void commands.stop();
          }}
        >
          Stop recording
        </Button>
      </div>
    </Dialog>
  );
}
