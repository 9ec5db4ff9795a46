import { useRef, useState } from 'react';
import { type RequestAnswer, say } from '#shared-core';
import { Button, Dialog } from '../design/index.ts';
import { useWindowParts } from '../parts/index.ts';
import { ClassViewPart } from './class-view-part.tsx';

type SecondScreen = NonNullable<RequestAnswer<'app/describe'>['secondScreen']>;

interface SecondScreenDialogProps {
  readonly offer: SecondScreen;
  readonly onClose: () => void;
}

/** A window of its own for the class: what it is, and the way to it in this shell. */
export function SecondScreenDialog({ offer, onClose }: SecondScreenDialogProps) {
  const { commands } = useWindowParts();
  return (
    <Dialog title={say('Second screen')} onClose={onClose}>
      <div className="second-screen">
        <p>
          {say(
            'A window of its own for the class. Drag it onto the projector and press “Full screen” in it. It shows a card to try the projector by, then the run with its forecast, and can change nothing.',
          )}
        </p>
        {offer.by === 'address' && <ViewerAddress address={offer.address} />}
        <ClassViewPart />
      </div>
      <div className="dialog-acts">
        <Button onClick={onClose}>{say('Done')}</Button>
        {offer.by === 'address' ? (
          <a
            className="button"
            data-weight="main"
            href={offer.address}
            target="_blank"
            rel="noopener noreferrer"
          >
            {say('Open it in a new window')}
          </a>
        ) : (
          <Button weight="main" onClick={() => void commands.openSecondScreen().then(onClose)}>
            {say('Open it')}
          </Button>
        )}
      </div>
    </Dialog>
  );
}

function ViewerAddress({ address }: { readonly address: string }) {
  const field = useRef<HTMLInputElement>(null);
  const [isCopied, setCopied] = useState(false);
  const copy = async () => {
    // Selected as well: where the clipboard is out of bounds, the usual keys still copy it.
    field.current?.select();
    try {
      await navigator.clipboard.writeText(address);
      setCopied(true);
    } catch {
      setCopied(false);
    }
  };
  return (
    <div className="field">
      <label className="field-name" htmlFor="viewer-address">
        {say('Or open this address in a browser on this computer')}
      </label>
      <div className="field-entry">
        <input
          id="viewer-address"
          ref={field}
          className="entry"
          readOnly
          value={address}
          onFocus={({ target }) => target.select()}
        />
        <Button onClick={() => void copy()}>{isCopied ? say('Copied') : say('Copy')}</Button>
      </div>
      <p className="unseen" role="status">
        {isCopied && say('The address is copied.')}
      </p>
    </div>
  );
}
