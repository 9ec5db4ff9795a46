import { type Stage, say, stageLabels, told } from '#shared-core';
import { stageLooks } from '../design/index.ts';

const stages: readonly { readonly stage: Stage; readonly words: string }[] = [
  { stage: 'warm-up', words: say('The pot heats up. No vapour has reached the thermometer.') },
  { stage: 'first-fraction', words: say('What boils lowest comes first. It is set apart.') },
  { stage: 'main-fraction', words: say('The head holds: ethanol with little water.') },
  { stage: 'tail', words: say('The head climbs: more and more water. Heat off.') },
];

/** The four stages as the strip will show them: something to read while nothing is running. */
export function WhatComes() {
  return (
    <ol className="what-comes" aria-label={say('What comes over, in order')}>
      {stages.map(({ stage, words }) => {
        const { colour, texture } = stageLooks[stage];
        return (
          <li key={stage}>
            <svg aria-hidden="true" focusable="false">
              <rect width="100%" height="100%" fill={colour} />
              <rect width="100%" height="100%" fill={`url(#${texture})`} fillOpacity={0.35} />
            </svg>
            <h2 className="what-comes-name">{told(stageLabels[stage])}</h2>
            <p className="what-comes-words">{words}</p>
          </li>
        );
      })}
    </ol>
  );
}
