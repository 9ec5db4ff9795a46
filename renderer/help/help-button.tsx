import { useState } from 'react';
import { say } from '#shared-core';
import { Button } from '../design/index.ts';
import { useBench, useMarkKeys, usePlace, usePreferences } from '../parts/index.ts';
import { HelpDialog } from './help-dialog.tsx';
import { topicFor } from './help-topic.ts';

/** The way to the help, the same in every place, and its key. */
export function HelpButton() {
  const place = usePlace();
  const isPortInTrouble = useBench(
    ({ probe }) => probe?.problem != null || probe?.state === 'unreadable',
  );
  const hasKeys = usePreferences(({ markKeys }) => markKeys);
  const [isOpen, setOpen] = useState(false);
  const open = () => setOpen(true);
  useMarkKeys(hasKeys ? [{ key: '?', run: open }] : []);
  return (
    <>
      <Button weight="quiet" onClick={open} aria-keyshortcuts={hasKeys ? '?' : undefined}>
        {say('Help')}
      </Button>
      {isOpen && (
        <HelpDialog openAt={topicFor(place, isPortInTrouble)} onClose={() => setOpen(false)} />
      )}
    </>
  );
}
