import { say } from '#shared-core';
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
    <Dialog title={say('Stop recording?')} onClose={onClose}>
      <p>
        {say(
          'Prompts end with the recording. The run stays in the library, where it can be replayed and exported.',
        )}
      </p>
      {!isHeatOff && (
        <p className="warning">
          {say(
            'No “Heat off” was marked. This program does not control the heat: is it off at the still?',
          )}
        </p>
      )}
      <div className="dialog-acts">
        <Button onClick={onClose}>{say('Go on recording')}</Button>
        <Button
          weight="act"
          onClick={() => {
            onClose();
            void commands.stop();
          }}
        >
          {say('Stop recording')}
        </Button>
      </div>
    </Dialog>
  );
}
