import { useEffect, useState } from 'react';
import { type ServiceProblem, say } from '#shared-core';
import { Button } from '../design/index.ts';
import { saveFile } from '../exchange/index.ts';
import { usePreferences, useWindowParts } from '../parts/index.ts';
import { momentText, problemWords } from '../words/index.ts';

type Made = { readonly text: string } | { readonly problem: ServiceProblem };

/** What whoever mends this program needs to know: first shown as it is, then saved as it was shown. */
export function ProblemReportPage() {
  const { service } = useWindowParts();
  const preferences = usePreferences((state) => state);
  const [withRunNames, setWithRunNames] = useState(false);
  const [made, setMade] = useState<Made | null>(null);
  useEffect(() => {
    let isWanted = true;
    setMade(null);
    const kept = Object.entries(preferences).filter(([, value]) => typeof value !== 'function');
    const facts = { ...windowFacts(), preferences: Object.fromEntries(kept) };
    void service.request('problem-report/make', { withRunNames, window: facts }).then((answer) => {
      if (!isWanted) return;
      setMade(
        answer.ok
          ? { text: `${JSON.stringify(answer.value, null, 2)}\n` }
          : { problem: answer.error },
      );
    });
    return () => {
      isWanted = false;
    };
  }, [service, withRunNames, preferences]);
  const text = made !== null && 'text' in made ? made.text : null;
  const save = () => {
    if (text === null) return;
    const day = momentText(new Date()).slice(0, 10);
    saveFile(`problem-report-${day}.json`, new Blob([text], { type: 'application/json' }));
  };
  return (
    <>
      <p>
        {say(
          'For whoever mends this program. It is sent nowhere: save it, read it, and hand it on yourself, with a sentence on what you did and what came of it.',
        )}
      </p>
      <p>
        {say(
          'It holds what stands below and nothing else: versions, this computer’s system, what went wrong lately, how the window is set, how the probe was heard, the room on the disk. It holds no names of people, no folders, no readings.',
        )}
      </p>
      <label className="check">
        <input
          type="checkbox"
          checked={withRunNames}
          onChange={({ target }) => setWithRunNames(target.checked)}
        />
        <span>{say('With the names of runs')}</span>
      </label>
      {made !== null && 'problem' in made && <p role="alert">{problemWords(made.problem)}</p>}
      <p>
        <Button weight="main" disabled={text === null} onClick={save}>
          {say('Save this report')}
        </Button>
      </p>
      <p className={made === null ? 'soft' : 'unseen'} role="status">
        {made === null ? say('Putting the report together …') : ''}
      </p>
      {text !== null && <pre className="help-notices">{text}</pre>}
    </>
  );
}

function windowFacts() {
  return {
    browser: navigator.userAgent.slice(0, 400),
    language: navigator.language,
    widthPx: window.innerWidth,
    heightPx: window.innerHeight,
  };
}
