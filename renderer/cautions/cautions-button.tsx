import { useState } from 'react';
import { say } from '#shared-core';
import { Button } from '../design/index.ts';
import { CautionsDialog } from './cautions-dialog.tsx';

/** The way to the cautions, the same in every place. */
export function CautionsButton() {
  const [isOpen, setOpen] = useState(false);
  return (
    <>
      <Button className="cautions-button" onClick={() => setOpen(true)}>
        {say('Cautions')}
      </Button>
      {isOpen && <CautionsDialog onClose={() => setOpen(false)} />}
    </>
  );
}
