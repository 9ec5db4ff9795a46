import type { ReactNode } from 'react';
import { type Snapshot, say, stageLabels, told } from '#shared-core';
import { Why } from '../design/index.ts';
import { usePreferences } from '../parts/index.ts';
import { inMidSentence, probeScaleWords, useWords } from '../words/index.ts';

interface FindingsProps {
  readonly snapshot: Snapshot;
  /** Whether it was thought of a moment that has passed while nothing newer is known. */
  readonly isPassed?: boolean;
  /** What is ahead, in rows of its own. */
  readonly ahead?: ReactNode;
}

/** What is thought of the run now: stage, vapour strength, what comes; each with its reason. */
export function Findings({ snapshot, isPassed = false, ahead }: FindingsProps) {
  const words = useWords();
  const { stage, vapour, plateau, timeS } = snapshot;
  const decimal = usePreferences((preferences) => preferences.decimal);
  const scale = stage.stage === 'cool-down' ? null : probeScaleWords(plateau, decimal);
  return (
    <dl className="findings" data-passed={isPassed}>
      {isPassed && (
        <div>
          <dt>{say('Not now')}</dt>
          <dd className="number">
            {say('This was thought at {time}.', { time: words.clock(timeS) })}
          </dd>
        </div>
      )}
      <div>
        <dt>{say('Stage')}</dt>
        <dd>
          <strong>{told(stageLabels[stage.stage])}</strong>
          <span className="soft number"> {likelihoodWords(stage)}</span>
          {stage.condition && <p>{conditionWords[stage.condition]}</p>}
          <Why of={say('Stage')}>
            <p>{words.said(stage.because)}</p>
            {stage.wouldChangeIf && (
              <p className="soft">
                {say('This would change if {condition}', {
                  condition: inMidSentence(words.said(stage.wouldChangeIf)),
                })}
              </p>
            )}
          </Why>
        </dd>
      </div>
      {vapour && (
        <div>
          <dt>{say('Vapour at the head')}</dt>
          <dd>
            {vapour.alcoholByVolume ? (
              <strong className="number">{words.range(vapour.alcoholByVolume, 0, '% vol')}</strong>
            ) : (
              <strong>{vapourWords[vapour.kind]}</strong>
            )}
            {vapour.ethanolMassPercent && (
              <span className="soft number">
                {' '}
                {words.range(vapour.ethanolMassPercent, 0, say('% mass'))}
              </span>
            )}
            <Why of={say('Vapour at the head')}>
              <p>{words.said(vapour.explanation)}</p>
            </Why>
          </dd>
        </div>
      )}
      {ahead}
      {scale && (
        <div>
          <dt>{say('This probe')}</dt>
          <dd>
            <strong className="number">{scale.finding}</strong>
            <span className="soft number"> {scale.range}</span>
            <Why of={say('This probe')}>
              <p>{words.said(scale.because)}</p>
            </Why>
          </dd>
        </div>
      )}
    </dl>
  );
}

const conditionWords = {
  'vapour-receded': say('The vapour has drawn back from the bulb.'),
  surging: say('The head is surging.'),
  'total-reflux': say('All vapour runs back: nothing is being collected.'),
  'probe-suspect': say('The probe is in doubt.'),
} as const;

const vapourWords = {
  unsettled: say('Not settled yet'),
  'below-azeotrope': say('Below the azeotrope'),
  'ethanol-water': say('Ethanol and water'),
  'above-water': say('Above boiling water'),
} as const;

/** Doubts alone, in words and tens of percent: more digits would promise too much. */
function likelihoodWords({ probability, condition }: Snapshot['stage']): string {
  // Of a stage by a probe that is in doubt nobody knows how likely it is.
  if (condition === 'probe-suspect') return `· ${say('in doubt')}`;
  if (probability >= 0.99) return '';
  // A stage is held until it is nearly certain that the next has begun: a small number would contradict its name.
  if (probability < 0.5) return `· ${say('perhaps over')}`;
  return `· ${say('{percent} % likely', { percent: Math.min(95, Math.round(probability * 20) * 5) })}`;
}
