import { useState } from 'react';
import { say } from '#shared-core';
import { CautionsButton } from '../cautions/index.ts';
import { Button } from '../design/index.ts';
import { HelpButton } from '../help/index.ts';
import { placeNames, useBench, usePlace, usePlaces } from '../parts/index.ts';
import { SecondScreenButton } from '../second-screen/index.ts';
import { DisplayDialog } from './display-dialog.tsx';
import { goOnIn, placeIn } from './go-on-in.ts';
import { SavedLine } from './saved-line.tsx';

/** The line above every place: where am I, is it saved, what to beware of. */
export function Masthead() {
  const here = usePlace();
  const places = usePlaces();
  const isShut = useBench(({ connection }) => connection === 'refused');
  const [isDisplayOpen, setDisplayOpen] = useState(false);
  return (
    <header className="masthead">
      {/* No link: the address names the place one is at, and another would lead away from it. */}
      <button type="button" className="skip" onClick={() => goOnIn(placeIn(document))}>
        {say('Skip to the content')}
      </button>
      <p className="masthead-name">
        <StillHeadSign />
        <span>Still Head Monitor</span>
      </p>
      <nav aria-label={say('Places')}>
        {(isShut ? [] : places).map((place) => (
          <a
            key={place}
            className="masthead-place"
            href={`#${place}`}
            aria-current={place === here ? 'page' : undefined}
          >
            {placeNames[place]}
          </a>
        ))}
      </nav>
      <SavedLine />
      <div className="masthead-buttons">
        <CautionsButton />
        <HelpButton />
        <SecondScreenButton />
        <Button weight="quiet" onClick={() => setDisplayOpen(true)}>
          {say('Display and sound')}
        </Button>
      </div>
      {isDisplayOpen && <DisplayDialog onClose={() => setDisplayOpen(false)} />}
    </header>
  );
}

/** A still head: riser, side arm, bulb of the probe at its height. */
function StillHeadSign() {
  return (
    <svg viewBox="0 0 32 32" width="30" height="30" aria-hidden="true" focusable="false">
      <path
        d="M11 30 V6 M19 30 V16 L30 21 M19 11 L30 16 M19 11 V6"
        fill="none"
        stroke="currentColor"
        strokeWidth="2.5"
        strokeLinecap="round"
      />
      <path d="M15 1 V12" stroke="currentColor" strokeWidth="2" strokeLinecap="round" />
      <circle cx="15" cy="14" r="2.4" fill="currentColor" />
    </svg>
  );
}
