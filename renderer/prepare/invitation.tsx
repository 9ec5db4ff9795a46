import { useState } from 'react';
import { say } from '#shared-core';
import { Button, ChoiceField } from '../design/index.ts';
import { goTo, useBench, useWindowParts } from '../parts/index.ts';
import { isSimulated } from '../probe/index.ts';
import { type RehearsalSpeed, rehearsalSpeeds, rehearse } from './rehearse.ts';

const speedOptions = rehearsalSpeeds.map((speed) => ({
  value: String(speed),
  label: say('{speed} times faster', { speed }),
}));

/** The quickest way in: watch a whole distillation without glass, heat or probe. Who has done so knows it, and gets one line. */
export function Invitation({ canAct }: { readonly canAct: boolean }) {
  const { commands } = useWindowParts();
  const isKnown = useBench(
    ({ rigs, probe }) =>
      // Who has a probe on the line is about to run, not to rehearse; and nobody is new here until that is known.
      rigs === null ||
      rigs.hasRehearsed ||
      rigs.last !== null ||
      (probe !== null && probe.state !== 'none' && !isSimulated(probe)),
  );
  const [speed, setSpeed] = useState<string>('60');
  const [isStarting, setStarting] = useState(false);
  const start = async () => {
    setStarting(true);
    const chosen = rehearsalSpeeds.find((known) => String(known) === speed) ?? 60;
    const isUnderWay = await rehearse(commands, chosen satisfies RehearsalSpeed);
    setStarting(false);
    if (isUnderWay) goTo('watch');
  };
  return (
    <section className="invitation" data-known={isKnown} aria-labelledby="invitation-title">
      <div>
        <h2 id="invitation-title">{isKnown ? say('Rehearse') : say('Rehearse first')}</h2>
        {!isKnown && (
          <p>
            {say(
              'A simulated still plays a whole distillation of a pear-juice ferment: no glass, no heat, no probe. Practise the prompts before the class arrives.',
            )}
          </p>
        )}
      </div>
      <div className="invitation-acts">
        <ChoiceField
          name={say('How fast')}
          isNameHidden
          options={speedOptions}
          value={speed}
          onValue={setSpeed}
        />
        <Button
          weight={isKnown ? 'plain' : 'main'}
          size={isKnown ? 'usual' : 'large'}
          disabled={!canAct || isStarting}
          onClick={() => void start()}
        >
          {isStarting ? say('Setting up the rig …') : say('Start the rehearsal')}
        </Button>
      </div>
    </section>
  );
}
