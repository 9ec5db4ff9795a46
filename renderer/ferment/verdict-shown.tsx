import {
  distillingAdvice,
  type FermentVerdict,
  fermentFigure,
  inDecimals,
  type KeptFerment,
  mostOfPot,
  readingsOfFerment,
  say,
  told,
  usualWarmthBand,
  type WarmthReport,
} from '#shared-core';
import { DrawnFigure } from '../figures/index.ts';
import { usePreferences } from '../parts/index.ts';
import { numberWords, quantityWords, rangeWords } from '../words/index.ts';
import { conditionWords, finishWords, stateWords } from './ferment-words.ts';
import { heardWarmth } from './heard-warmth.ts';

interface VerdictProps {
  readonly ferment: KeptFerment;
  readonly verdict: FermentVerdict;
}

interface VerdictShownProps extends VerdictProps {
  /** How warm it was kept; null while that is read. */
  readonly warmth: WarmthReport | null;
}

/** What is said of the ferment now: first in a sentence, then in numbers, then the week it comes from. */
export function VerdictShown({ ferment, verdict, warmth }: VerdictShownProps) {
  const decimal = usePreferences((preferences) => preferences.decimal);
  const { state, because, strengthAbv, expectedEndGravity, problems } = verdict;
  const heard = heardWarmth(ferment, warmth);
  const drawing = fermentFigure({
    readings: readingsOfFerment(ferment),
    endGravity: expectedEndGravity,
    ...(heard.length > 0 && {
      warmth: { heard, band: warmth?.keeping?.band ?? usualWarmthBand },
    }),
  });
  return (
    <section aria-label={say('What the log says')} role="status">
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
      {drawing && (
        <DrawnFigure
          drawing={drawing}
          caption={say('As entered, gravities at 20 °C. Intervals hold nine times in ten.')}
        />
      )}
    </section>
  );
}

/** Whether it may go into the still, and what to do first. Advice; whoever distils decides. */
export function Readiness({ ferment, verdict }: VerdictProps) {
  const decimal = usePreferences((preferences) => preferences.decimal);
  const { isGo, unmet } = distillingAdvice(ferment, verdict);
  const pot = quantityWords(ferment.stated.volumeMl / mostOfPot, 0, 'mL', decimal);
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
