import { say } from '#shared-core';
import { Say } from '../words/index.ts';

/** A window whose address was used up: nothing here can work, so nothing else is offered. */
export function RefusedPlace() {
  // Only pupils' own screens come by another name than this computer's own.
  if (!['127.0.0.1', 'localhost'].includes(window.location.hostname)) return <LessonOver />;
  return (
    <main className="place" id="place">
      <h1>{say('This address was used before')}</h1>
      <p className="place-lead">
        <Say
          sentence={
            'It opens one window, once, and that window goes on as it was. For a new one, start the program again, or open the page <code>open-window.html</code> in the folder of runs. A run that is being recorded goes on.'
          }
          parts={{ code: (words) => <code>{words}</code> }}
        />
      </p>
    </main>
  );
}

function LessonOver() {
  return (
    <main className="place" id="place">
      <h1>{say('There is nothing to watch at this address now')}</h1>
      <p className="place-lead">
        {say(
          'The lesson is over, watching was ended, or the code was mistyped. For the next lesson there is a new address: ask for it.',
        )}
      </p>
    </main>
  );
}
