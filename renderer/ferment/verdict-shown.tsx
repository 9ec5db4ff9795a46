import {
  distillingAdvice,
  type FermentVerdict,
  inDecimals,
  type KeptFerment,
  say,
  told,
} from '#shared-core';
import { usePreferences } from '../parts/index.ts';
import { numberWords, quantityWords, rangeWords } from '../words/index.ts';
import { conditionWords, finishWords, stateWords } from './ferment-words.ts';

interface VerdictProps {
  readonly ferment: KeptFerment;
  readonly verdict: FermentVerdict;
}

interface VerdictShownProps extends VerdictProps {
  /** The log is judged with what was just entered: the verdict before it keeps the place of what is to come, unseen. */
  readonly isJudging: boolean;
}

/** What is said of the ferment now: first in a sentence, then in numbers. */
export function VerdictShown({ ferment, verdict, isJudging }: VerdictShownProps) {
  const decimal = usePreferences((preferences) => preferences.decimal);
  const { state, strengthAbv, expectedEndGravity, problems, because } = verdict;
  return (
    <section aria-label={say('What the log says')} role="status">
      {isJudging && <p className="ferment-state ferment-judging">{say('Reading the log …')}</p>}
      <div className={isJudging ? 'ferment-to-come' : ''}>
        <p className="ferment-state">
          <strong>{stateWords(verdict)}.</strong> {inDecimals(told(because), decimal)}
        </p>
        <dl className="ferment-facts">
          <div>
            <dt>{say('Strength now')}</dt>
            <dd>
              {strengthAbv === null
                ? say('not known')
                : `${quantityWords(strengthAbv.value, 1, '% vol', decimal)} (${rangeWords(strengthAbv, 1, '% vol', decimal)})`}
            </dd>
          </div>
          <div>
            <dt>{state === 'finished' ? say('Ended') : say('Ends')}</dt>
            <dd>{finishWords(verdict, ferment.stated.beganAtIso)}</dd>
          </div>
          {expectedEndGravity !== null && (
            <div>
              <dt>{say('Gravity at its end')}</dt>
              <dd>
                {numberWords(expectedEndGravity.value, 3, decimal)} (
                {rangeWords(expectedEndGravity, 3, '', decimal).trim()})
              </dd>
            </div>
          )}
        </dl>
        {problems.map((problem) => (
          <p key={problem} className="field-problem">
            {inDecimals(told(problem), decimal)}
          </p>
        ))}
      </div>
    </section>
  );
}

/** Whether it may go into the still, and what to do first. Advice; whoever distils decides. */
export function Readiness({ ferment, verdict }: VerdictProps) {
  const decimal = usePreferences((preferences) => preferences.decimal);
  const { isGo, unmet, leastPotMl } = distillingAdvice(ferment, verdict);
  const pot = quantityWords(leastPotMl, 0, 'mL', decimal);
  return (
    <section aria-label={say('Ready for the still?')}>
      <h3>{say('Ready for the still?')}</h3>
      {isGo ? (
        <p>{say('By its log, yes: finished, degassed, settled and strained.')}</p>
      ) : (
        <>
          <p>{say('Not yet.')}</p>
          <ul>
            {unmet.map((condition) => (
              <li key={condition}>{conditionWords(condition)}</li>
            ))}
          </ul>
        </>
      )}
      <p className="small soft">
        {say(
          'Fill the pot to half at most: all of this ferment at once needs a pot of {pot} or more.',
          { pot },
        )}
      </p>
    </section>
  );
}
