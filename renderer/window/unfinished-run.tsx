import { useEffect, useState } from 'react';
import { type RequestAnswer, say } from '#shared-core';
import { Button } from '../design/index.ts';
import { goTo, useAsked, useBench, useWindowParts } from '../parts/index.ts';
import { mayCommand } from '../stores/index.ts';
import { durationWords, Say, timeOfDayWords } from '../words/index.ts';

type Unfinished = NonNullable<RequestAnswer<'run/unfinished'>['run']>;

/** A run that broke off with the program: going on with it is one press, wherever the window stands. */
export function UnfinishedRun() {
  const { commands } = useWindowParts();
  const canAct = useBench(mayCommand);
  const isIdle = useBench(({ recording }) => recording?.state === 'idle');
  const [run, setRun] = useState<Unfinished | null>(null);
  const [isGoingOn, setGoingOn] = useState(false);
  const mayGoOn = canAct && isIdle;
  useEffect(() => {
    if (!mayGoOn) setRun(null);
  }, [mayGoOn]);
  useAsked(
    'run/unfinished',
    mayGoOn ? {} : null,
    (answer) => answer.ok && setRun(answer.value.run),
  );
  if (run === null) return null;
  const goOn = async () => {
    setGoingOn(true);
    const isUnderWay = await commands.goOn(run.runId);
    setGoingOn(false);
    if (isUnderWay) goTo('watch');
  };
  return (
    <section className="unfinished-run" aria-label={say('A run that broke off')}>
      <p role="status">
        <Say
          sentence={
            '<strong>The run “{name}” broke off at {brokeOffAt}</strong> when the program was closed, after {duration}. Nothing is recorded until you go on.'
          }
          parts={{
            name: run.name,
            brokeOffAt: timeOfDayWords(run.brokeOffAtIso),
            duration: durationWords(run.durationS),
            strong: (words) => <strong>{words}</strong>,
          }}
        />
      </p>
      <div className="urgent-bar-acts">
        <Button weight="main" size="large" disabled={isGoingOn} onClick={() => void goOn()}>
          {isGoingOn ? say('Opening the run …') : say('Go on with the run')}
        </Button>
        <Button size="large" disabled={isGoingOn} onClick={() => setRun(null)}>
          {say('Leave it as it is')}
        </Button>
      </div>
    </section>
  );
}
