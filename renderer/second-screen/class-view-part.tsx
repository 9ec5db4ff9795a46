import { useEffect, useState } from 'react';
import { type RequestAnswer, type RequestName, say } from '#shared-core';
import { Button } from '../design/index.ts';
import { useWindowParts } from '../parts/index.ts';
import { QrCode } from './qr-code.tsx';

type ClassView = RequestAnswer<'class-view/status'>;

const lookAgainMs = 2000;

type ClassViewRequest = Extract<RequestName, `class-view/${string}`>;

/** Pupils' own phones and tablets: off until somebody wants it, and plain about what that means. */
export function ClassViewPart() {
  const { service } = useWindowParts();
  const [view, setView] = useState<ClassView | null>(null);
  const [isBusy, setBusy] = useState(false);

  useEffect(() => {
    let isHere = true;
    const look = () =>
      void service.request('class-view/status', {}).then((answer) => {
        if (!isHere || !answer.ok) return;
        const now = answer.value;
        // Why it could not be opened stays to be read.
        setView((before) =>
          before?.state === 'impossible' && now.state === 'shut' ? before : now,
        );
      });
    look();
    const timer = window.setInterval(look, lookAgainMs);
    return () => {
      isHere = false;
      window.clearInterval(timer);
    };
  }, [service]);

  const have = async (name: ClassViewRequest) => {
    setBusy(true);
    const answer = await service.request(name, {});
    setBusy(false);
    if (answer.ok) setView(answer.value);
  };

  if (view === null) return null;
  return (
    <section className="class-view" aria-labelledby="class-view-title">
      <h3 id="class-view-title">{say('Phones and tablets of the class')}</h3>
      {view.state === 'open' ? (
        <>
          <p>{say('Scan this, or type the address. It ends with the run.')}</p>
          <QrCode text={view.address} />
          <p className="class-view-address">{view.address}</p>
          <p role="status">{onlookersInWords(view.onlookers)}</p>
          <Button disabled={isBusy} onClick={() => void have('class-view/shut')}>
            {say('End watching')}
          </Button>
        </>
      ) : (
        <>
          <p>
            {say(
              'Off. Switched on, everybody in the same network who has the lesson’s code sees this run on a screen of their own, until it ends. Nothing is encrypted on the way. They can change nothing, and see no names, no notes and no other run. Ask whoever looks after the network first.',
            )}
          </p>
          <Button disabled={isBusy} onClick={() => void have('class-view/open')}>
            {say('Let the class watch')}
          </Button>
          {view.state === 'impossible' && <p role="alert">{whyNot[view.why]}</p>}
        </>
      )}
    </section>
  );
}

const whyNot: Readonly<Record<Extract<ClassView, { state: 'impossible' }>['why'], string>> = {
  'no-network': say(
    'This computer is in no local network. Connect it to the one the class uses, then press again.',
  ),
  'not-allowed': say(
    'The system does not let this program listen in the network. Its firewall decides: ask whoever looks after this computer.',
  ),
};

function onlookersInWords(count: number): string {
  if (count === 0) return say('Nobody is watching yet.');
  return say('{count, plural, one {# screen is watching.} other {# screens are watching.}}', {
    count,
  });
}
