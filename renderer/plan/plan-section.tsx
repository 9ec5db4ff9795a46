import { planCoverage, say } from '#shared-core';
import { NumberField, Section } from '../design/index.ts';
import { useDraftFields } from '../draft/index.ts';
import { NumbersTable, StrengthAgainstShare } from '../figures/index.ts';
import { usePreferences } from '../parts/index.ts';
import { useWords } from '../words/index.ts';
import { CourseFigure } from './course-figure.tsx';
import { planSentence } from './plan-words.ts';
import { recoveryAtMeanStrength } from './recovery-at.ts';
import type { PreparedPlan } from './use-prepared-plan.ts';

/** What this charge is expected to do in this rig under this air, drawn before any heat. */
export function PlanSection({ prepared }: { readonly prepared: PreparedPlan }) {
  const { settings, numberField } = useDraftFields();
  const decimal = usePreferences((preferences) => preferences.decimal);
  const words = useWords();
  const drip = numberField('dripRateMlPerMin');
  const { request, plan, isMaking } = prepared;
  const { leastStrengthAbv, stop } = settings.ok
    ? settings.value
    : { leastStrengthAbv: 80, stop: { kind: 'strength' } as const };
  const sentence = plan ? planSentence(plan, leastStrengthAbv, decimal) : null;
  const leastMeanAbv = stop.kind === 'strength' ? null : stop.leastMeanStrengthAbv;
  const recovered =
    plan && leastMeanAbv !== null
      ? recoveryAtMeanStrength(plan.purityAgainstRecovery, leastMeanAbv)
      : null;
  return (
    <Section
      title={say('Expected course')}
      lead={say(
        'Simulated some dozens of times with what you know of the rig, and how well you know it.',
      )}
    >
      <NumberField
        unit="mL/min"
        hint={say('Slow dripping means more reflux and a longer plateau.')}
        {...drip}
      />
      {request === null && plan === null && (
        <p className="soft field-wide">
          {say('Fill in the marked fields and the course is drawn here.')}
        </p>
      )}
      {isMaking && (
        <p role="status" className="soft">
          {say('Simulating …')}
        </p>
      )}
      {plan && sentence && (
        <div className="plan field-wide" data-stale={isMaking}>
          <p className="prepare-finding">{sentence}</p>
          <div className="plan-figures">
            <CourseFigure
              plan={plan}
              description={say('Expected head temperature. {sentence}', { sentence })}
            />
            <StrengthAgainstShare
              points={plan.purityAgainstRecovery.map(({ recoveredFraction, strengthAbv }) => ({
                share: recoveredFraction,
                strengthAbv,
              }))}
              leastMeanAbv={leastMeanAbv}
              reached={null}
              description={say(
                'Mean strength of the distillate against the share of ethanol collected: the more is collected, the weaker it gets.',
              )}
            />
          </div>
          {recovered !== null && leastMeanAbv !== null && (
            <p>
              {say('Stopping at {leastMean} on average collects about {quantity} of the ethanol.', {
                leastMean: words.quantity(leastMeanAbv, 0, '% vol'),
                quantity: words.quantity(100 * recovered, 0, '%'),
              })}
            </p>
          )}
          <NumbersTable
            title={say('Expected, with {percent} % intervals', { percent: 100 * planCoverage })}
            rows={[
              [say('Charge boils at'), words.range(plan.boilingPointC, 1, '°C')],
              [
                say('Plateau of this charge and rig'),
                plan.plateauC ? words.range(plan.plateauC, 1, '°C') : say('none'),
              ],
              [
                say('Ethanol in the main fraction'),
                plan.recoveredFraction
                  ? words.range(inPercent(plan.recoveredFraction), 0, '%')
                  : say('none'),
              ],
              [
                say('Reflux ratio'),
                plan.refluxRatio ? words.range(plan.refluxRatio, 1, '') : say('not known'),
              ],
            ]}
          />
        </div>
      )}
    </Section>
  );
}

function inPercent({ low, high }: { readonly low: number; readonly high: number }) {
  return { low: 100 * low, high: 100 * high };
}
