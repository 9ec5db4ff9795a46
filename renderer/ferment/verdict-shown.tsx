import {
  distillingAdvice,
  type FermentVerdict,
  fermentFigure,
  type KeptFerment,
  mostOfPot,
  readingsOfFerment,
} from '#shared-core';
import { DrawnFigure } from '../figures/index.ts';
import { usePreferences } from '../parts/index.ts';
import { numberWords, quantityWords, rangeWords } from '../words/index.ts';
import { conditionWords, finishWords, stateWords } from './ferment-words.ts';

interface VerdictShownProps {
  readonly ferment: KeptFerment;
  readonly verdict: FermentVerdict;
}

/** What is said of the ferment now: first in a sentence, then in numbers, then the week it comes from. */
export function VerdictShown({ ferment, verdict }: VerdictShownProps) {
  const decimal = usePreferences((preferences) => preferences.decimal);
  const { state, because, strengthAbv, expectedEndGravity, problems } = verdict;
  const drawing = fermentFigure({
    readings: readingsOfFerment(ferment),
    endGravity: expectedEndGravity,
  });
  return (
    <section aria-label="What the log says" role="status">
      <p className="ferment-state">
        <strong>{stateWords[state]}.</strong> {because}
      </p>
      <dl className="ferment-facts">
        <div>
          <dt>Strength now</dt>
          <dd>
            {strengthAbv === null
              ? 'not known'
              : `${quantityWords(strengthAbv.value, 1, '% vol', decimal)} (${rangeWords(strengthAbv, 1, '% vol', decimal)})`}
          </dd>
        </div>
        <div>
          <dt>{state === 'finished' ? 'Ended' : 'Ends'}</dt>
          <dd>{finishWords(verdict, ferment.stated.beganAtIso)}</dd>
        </div>
        {expectedEndGravity !== null && (
          <div>
            <dt>Gravity at its end</dt>
            <dd>
              {numberWords(expectedEndGravity.value, 3, decimal)} (
              {rangeWords(expectedEndGravity, 3, '', decimal).trim()})
            </dd>
          </div>
        )}
      </dl>
      {problems.map((problem) => (
        <p key={problem} className="field-problem">
          {problem}
        </p>
      ))}
      {drawing && (
        <DrawnFigure
          drawing={drawing}
          caption="As entered, gravities at 20 °C. Intervals hold nine times in ten."
        />
      )}
    </section>
  );
}

/** Whether it may go into the still, and what to do first. Advice; whoever distils decides. */
export function Readiness({ ferment, verdict }: VerdictShownProps) {
  const decimal = usePreferences((preferences) => preferences.decimal);
  const { isGo, unmet } = distillingAdvice(ferment, verdict);
  const pot = quantityWords(ferment.stated.volumeMl / mostOfPot, 0, 'mL', decimal);
  return (
    <section aria-label="Ready for the still?">
      <h3>Ready for the still?</h3>
      {isGo ? (
        <p>By its log, yes: finished, degassed, settled and strained.</p>
      ) : (
        <>
          <p>Not yet.</p>
          <ul>
            {unmet.map((condition) => (
              <li key={condition}>{conditionWords(condition)}</li>
            ))}
          </ul>
        </>
      )}
      <p className="small soft">
        Fill the pot to half at most: all of this ferment at once needs a pot of {pot} or more.
      </p>
    </section>
  );
}
