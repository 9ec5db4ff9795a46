import { type LessonScript, type Stage, say, stageLabels, stages, told } from '#shared-core';
import { Button, Dialog, OnPaper, TextBlock } from '../design/index.ts';
import { defaultScript } from './default-script.ts';
import { scriptParts } from './script-parts.ts';
import { useLessonScript } from './use-lesson-script.ts';

type StageScript = LessonScript[keyof LessonScript];

/** What to show, ask and predict in every stage: written over as the teacher likes, and printed. */
export function LessonScriptDialog({ onClose }: { readonly onClose: () => void }) {
  const { script, write } = useLessonScript();
  return (
    <Dialog title={say('Lesson script')} onClose={onClose}>
      <p>
        {say(
          'Only this window shows it: in Watch, the line of the present stage. It is kept with the set-up when a run starts, and with a rig that is kept under a name.',
        )}
      </p>
      <div className="lesson-script">
        {stages.map((stage) => (
          <StageFields
            key={stage}
            stage={stage}
            written={script[stage]}
            onWritten={(written) => write({ ...script, [stage]: written })}
          />
        ))}
      </div>
      <OnPaper>
        <ScriptSheet script={script} />
      </OnPaper>
      <div className="dialog-acts">
        <Button onClick={() => write(defaultScript)}>{say('Back to the given text')}</Button>
        <Button onClick={() => window.print()}>{say('Print')}</Button>
        <Button weight="main" onClick={onClose}>
          {say('Done')}
        </Button>
      </div>
    </Dialog>
  );
}

interface StageFieldsProps {
  readonly stage: Stage;
  readonly written: StageScript;
  readonly onWritten: (written: StageScript) => void;
}

function StageFields({ stage, written, onWritten }: StageFieldsProps) {
  return (
    <fieldset>
      <legend className="lesson-script-stage">{told(stageLabels[stage])}</legend>
      {scriptParts.map(({ part, name }) => (
        <TextBlock
          key={part}
          name={name}
          rows={2}
          maxLength={1000}
          text={written[part]}
          onText={(text) => onWritten({ ...written, [part]: text })}
        />
      ))}
    </fieldset>
  );
}

function ScriptSheet({ script }: { readonly script: LessonScript }) {
  return (
    <>
      <h1>{say('Lesson script')}</h1>
      {stages.map((stage) => (
        <section key={stage}>
          <h2>{told(stageLabels[stage])}</h2>
          <dl>
            {scriptParts.map(({ part, name }) => (
              <div key={part} className="script-line">
                <dt>{name}</dt>
                <dd>{script[stage][part]}</dd>
              </div>
            ))}
          </dl>
        </section>
      ))}
    </>
  );
}
