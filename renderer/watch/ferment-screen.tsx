import { useEffect, useRef } from 'react';
import {
  cautionOf,
  type FermentVerdict,
  type KeptFerment,
  type KeptWarm,
  readingsOfFerment,
  say,
  told,
} from '#shared-core';
import { CautionsButton } from '../cautions/index.ts';
import { Button } from '../design/index.ts';
import { nextActWords, stateWords, useFerments, useJudgement } from '../ferment/index.ts';
import { useBench, usePreferences } from '../parts/index.ts';
import { isViewer } from '../stores/index.ts';
import { useKeptWarm, warmthAlarmWords, warmthNowWords } from '../warmth/index.ts';
import { numberWords, quantityWords, rangeWords } from '../words/index.ts';
import { fullScreenIfAllowed } from './full-screen.ts';
import { useClassroomKeys } from './use-classroom-keys.ts';

interface FermentScreenProps {
  /** Which ferment; null for the one that is kept warm. */
  readonly fermentId: string | null;
  readonly onClose: () => void;
}

/** The week of a ferment for the whole room: how warm, how strong, what comes next; nothing smaller than a projector can carry. */
export function FermentScreen({ fermentId, onClose }: FermentScreenProps) {
  const closeButton = useRef<HTMLButtonElement>(null);
  const onlyWatches = useBench(isViewer);
  const kept = useKeptWarm();
  const { ferments } = useFerments(kept?.now.heardAtIso ?? null);
  const shown = fermentId ?? kept?.fermentId ?? null;
  const ferment = ferments?.find((one) => one.fermentId === shown) ?? null;
  useClassroomKeys(onClose);
  useEffect(() => {
    closeButton.current?.focus();
  }, []);
  return (
    <main className="classroom ferment-screen" id="place">
      {ferment === null ? (
        <p role="status">{say('Reading the log …')}</p>
      ) : (
        <OneFerment ferment={ferment} kept={kept?.fermentId === ferment.fermentId ? kept : null} />
      )}
      <div className="classroom-foot">
        <p>{told(cautionOf('never-sealed').act)}</p>
        <CautionsButton />
        {onlyWatches && <Button onClick={fullScreenIfAllowed}>{say('Full screen')}</Button>}
        <Button ref={closeButton} onClick={onClose}>
          {say('Leave')}
        </Button>
      </div>
    </main>
  );
}

interface OneFermentProps {
  readonly ferment: KeptFerment;
  /** How warm it is kept; null where no probe is in it now. */
  readonly kept: KeptWarm | null;
}

const dayMs = 24 * 3_600_000;

function OneFerment({ ferment, kept }: OneFermentProps) {
  const decimal = usePreferences((preferences) => preferences.decimal);
  const { verdict } = useJudgement(ferment);
  const day = 1 + Math.floor((Date.now() - Date.parse(ferment.stated.beganAtIso)) / dayMs);
  const [alarm] = kept?.now.standing ?? [];
  const called = kept && alarm ? warmthAlarmWords(kept, alarm.alarm, decimal) : null;
  // What was heard long ago is no temperature of now.
  const isUnheard = kept?.now.standing.some((one) => one.alarm === 'unheard') ?? false;
  const temperatureC = isUnheard ? null : (kept?.now.temperatureC ?? null);
  return (
    <>
      <div className="classroom-top">
        <div role="status">
          <h1 className="sentence-words">
            {say('{name}, day {day}', { name: ferment.stated.name, day })}
          </h1>
          {called === null ? (
            <p className="sentence-act">
              {verdict === null ? say('Reading the log …') : stateWords(verdict)}
            </p>
          ) : (
            <p className="sentence-act">{called.act}</p>
          )}
        </div>
        {temperatureC !== null && (
          <p className="head-readout-week">
            <span className="head-value">
              {numberWords(temperatureC, 1, decimal)}
              <span className="head-unit"> °C</span>
            </span>
          </p>
        )}
      </div>
      <dl className="ferment-screen-facts">
        {kept !== null && (
          <div>
            <dt>{say('How warm')}</dt>
            <dd>
              {called?.title ?? warmthNowWords(kept, decimal)}{' '}
              {say('Wanted: {low} to {high}.', {
                low: quantityWords(kept.keeping.band.lowC, 0, '°C', decimal),
                high: quantityWords(kept.keeping.band.highC, 0, '°C', decimal),
              })}
            </dd>
          </div>
        )}
        {verdict !== null && <Judged ferment={ferment} verdict={verdict} />}
      </dl>
    </>
  );
}

function Judged({
  ferment,
  verdict,
}: {
  readonly ferment: KeptFerment;
  readonly verdict: FermentVerdict;
}) {
  const decimal = usePreferences((preferences) => preferences.decimal);
  const { strengthAbv } = verdict;
  const gravity =
    readingsOfFerment(ferment).findLast((reading) => reading.gravity !== null)?.gravity ?? null;
  return (
    <>
      {gravity !== null && (
        <div>
          <dt>{say('Gravity')}</dt>
          <dd>{numberWords(gravity, 3, decimal)}</dd>
        </div>
      )}
      {strengthAbv !== null && (
        <div>
          <dt>{say('Strength now')}</dt>
          <dd>
            {quantityWords(strengthAbv.value, 1, '% vol', decimal)} (
            {rangeWords(strengthAbv, 1, '% vol', decimal)})
          </dd>
        </div>
      )}
      <div>
        <dt>{say('What comes next')}</dt>
        <dd>{nextActWords(ferment, verdict)}</dd>
      </div>
    </>
  );
}
