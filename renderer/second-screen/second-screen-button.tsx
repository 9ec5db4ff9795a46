import { useState } from 'react';
import { say } from '#shared-core';
import { Button } from '../design/index.ts';
import { useBench } from '../parts/index.ts';
import { SecondScreenDialog } from './second-screen-dialog.tsx';

/** The way to a window for the class; a window that only watches has none to give. */
export function SecondScreenButton({
  name = say('Second screen'),
  weight = 'quiet',
}: {
  readonly name?: string;
  readonly weight?: 'quiet' | 'plain';
}) {
  const offer = useBench(({ app }) => app?.secondScreen ?? null);
  const [isOpen, setOpen] = useState(false);
  if (offer === null) return null;
  return (
    <>
      <Button weight={weight} onClick={() => setOpen(true)}>
        {name}
      </Button>
      {isOpen && <SecondScreenDialog offer={offer} onClose={() => setOpen(false)} />}
    </>
  );
}
