import { useState } from 'react';
import { type MarkBody, say } from '#shared-core';
import { Button } from '../design/index.ts';
import { MeasureDialog } from '../measure/index.ts';
import { useBench, useMarkKeys, usePreferences, useWindowParts } from '../parts/index.ts';
import { benchMarks, mayCommand, type RunView } from '../stores/index.ts';
import { clockWords, shortened, useWords } from '../words/index.ts';
import { DropsButton } from './drops-button.tsx';
import { type MarkAct, MarkButton } from './mark-button.tsx';
import { NoteDrawer } from './note-drawer.tsx';
import { takeHeatOff } from './take-heat-off.ts';
import { VolumeDialog } from './volume-dialog.tsx';

/** A note of any length may be undone; its button keeps to one line beside the others. */
const undoLetters = 12;

type OpenDialog = 'receiver-changed' | 'volume-read' | 'measured' | null;

/** Everything the person does at the bench, one key or one button each, and undo for all of it. */
export function MarkBar({ view }: { readonly view: RunView }) {
  const { commands } = useWindowParts();
  const canAct = useBench(mayCommand);
  const showKey = usePreferences(({ markKeys }) => markKeys);
  const words = useWords();
  const [dialog, setDialog] = useState<OpenDialog>(null);
  const [isNoting, setNoting] = useState(false);
  const last = benchMarks(view.marks).at(-1);
  const chargeMl = view.settings.charge.volumeMl;
  const heat = view.snapshot?.heat ?? 'unknown';

  const mark = (body: MarkBody) => {
    setDialog(null);
    void commands.mark(body);
  };
  const alarms = view.snapshot?.alarms ?? [];
  const isAsked = alarms.some(
    ({ alarm, state }) => alarm === 'attention' && state === 'unacknowledged',
  );
  const answerAttention = async () => {
    const isMarked = await commands.mark({ type: 'attention-answered' });
    if (isMarked && isAsked) await commands.acknowledge('attention');
  };
  const undo = () => {
    if (last) void commands.mark({ type: 'mark-withdrawn', withdrawnMarkId: last.markId });
  };
  const heatActs: readonly MarkAct[] = [
    { key: 'h', name: say('Heat on'), isNow: heat === 'on', run: () => mark({ type: 'heat-on' }) },
    {
      key: 'e',
      name: say('eased'),
      beginOfName: say('Heat'),
      isNow: heat === 'eased',
      run: () => mark({ type: 'heat-eased' }),
    },
    {
      key: 'o',
      name: say('off'),
      beginOfName: say('Heat'),
      isNow: heat === 'off',
      run: () => void takeHeatOff(commands, alarms),
    },
  ];
  const otherActs: readonly MarkAct[] = [
    {
      key: 'r',
      name: say('Receiver'),
      restOfName: say('changed'),
      run: () => setDialog('receiver-changed'),
    },
    { key: 'v', name: say('Volume'), run: () => setDialog('volume-read') },
    { key: 'm', name: say('Measured'), run: () => setDialog('measured') },
    { key: 'n', name: say('Note'), isNow: isNoting, run: () => setNoting(true) },
    { key: 'a', name: say('At the still'), run: () => void answerAttention() },
  ];
  const isListening = canAct && dialog === null && showKey;
  useMarkKeys(isListening ? [...heatActs, ...otherActs, { key: 'u', run: undo }] : []);

  return (
    <section className="mark-bar" aria-label={say('Marks')}>
      <div className="heat-marks">
        {heatActs.map((act) => (
          <MarkButton key={act.key} act={act} canAct={canAct} showKey={showKey} />
        ))}
      </div>
      {otherActs.slice(0, 2).map((act) => (
        <MarkButton key={act.key} act={act} canAct={canAct} showKey={showKey} />
      ))}
      <DropsButton canAct={canAct} showKey={showKey} onCounted={mark} />
      {otherActs.slice(2).map((act) => (
        <MarkButton key={act.key} act={act} canAct={canAct} showKey={showKey} />
      ))}
      <Button
        weight="quiet"
        disabled={!canAct || !last}
        aria-keyshortcuts={showKey ? 'u' : undefined}
        onClick={undo}
        title={last && `${words.mark(last.mark)}, ${clockWords(last.timeS)}`}
      >
        {showKey && (
          <span className="key" aria-hidden="true">
            u
          </span>
        )}
        {last
          ? say('Undo “{mark}”', { mark: shortened(words.mark(last.mark), undoLetters) })
          : say('Undo')}
      </Button>
      {dialog === 'measured' && (
        <MeasureDialog
          cuts={receiversIn(view)}
          chargeMl={chargeMl}
          onMark={mark}
          onClose={() => setDialog(null)}
        />
      )}
      {isNoting && <NoteDrawer canAct={canAct} onClose={() => setNoting(false)} />}
      {(dialog === 'receiver-changed' || dialog === 'volume-read') && (
        <VolumeDialog
          kind={dialog}
          chargeMl={chargeMl}
          onMark={mark}
          onClose={() => setDialog(null)}
        />
      )}
    </section>
  );
}

/** Receivers used so far, the one in place included. */
function receiversIn({ marks }: RunView): number {
  return 1 + benchMarks(marks).filter(({ mark }) => mark.type === 'receiver-changed').length;
}
