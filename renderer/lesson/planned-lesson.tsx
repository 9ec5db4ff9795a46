import { type RunPlan, say } from '#shared-core';
import { useNow, usePrepare } from '../parts/index.ts';
import { timeOfDayWords } from '../words/index.ts';
import { bellAfter, latestStartWords } from './bell.ts';
import { BellField } from './bell-field.tsx';
import {
  type ExpectedTime,
  expectedTime,
  expectedTimeWords,
  type Stretch,
} from './expected-time.ts';

/** The plan as times of the clock, if the heat went on now; and whether it fits into the lesson. */
export function PlannedLesson({ plan }: { readonly plan: RunPlan | null }) {
  const bell = usePrepare((state) => state.draft.bell);
  const nowMs = useNow();
  const vapour = plan?.timeToVapourS ?? null;
  const heatOff = plan?.mainFraction?.toS ?? null;
  const bellMs = bellAfter(bell, nowMs);
  return (
    <div className="planned-lesson">
      <h3>{say('If the heat goes on now')}</h3>
      <dl className="expectation">
        {vapour && <TimeRow name={say('Vapour at the head')} at={ifHeatedNow(vapour, nowMs)} />}
        {heatOff && <TimeRow name={say('Heat off')} at={ifHeatedNow(heatOff, nowMs)} />}
        {plan && !heatOff && (
          <div>
            <dt>{say('Heat off')}</dt>
            <dd>{say('No main fraction is expected: see “Expected course”.')}</dd>
          </div>
        )}
      </dl>
      {plan === null && <p className="soft small">{say('Told once all entries are made.')}</p>}
      <BellField verdict={bellMs && heatOff ? latestStartWords(bellMs, nowMs, heatOff) : null} />
    </div>
  );
}

function ifHeatedNow({ low, high }: Stretch, nowMs: number): ExpectedTime {
  return expectedTime({ low, high, madeS: 0 }, nowMs, nowMs);
}

function TimeRow({ name, at }: { readonly name: string; readonly at: ExpectedTime }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>
        <strong className="number">{expectedTimeWords(at)}</strong>
        {at.kind === 'too-early' && (
          <p className="small soft">
            {say('Not before {time}. Plates and heat, under “In the pot”, make it narrower.', {
              time: timeOfDayWords(new Date(at.notBeforeMs).toISOString()),
            })}
          </p>
        )}
      </dd>
    </div>
  );
}
