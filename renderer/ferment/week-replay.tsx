import { useId, useState } from 'react';
import {
  fermentFigure,
  type KeptFerment,
  readingsOfFerment,
  say,
  usualWarmthBand,
} from '#shared-core';
import { Button } from '../design/index.ts';
import { DrawnFigure } from '../figures/index.ts';
import { usePreferences } from '../parts/index.ts';
import { useKeptWarm, useWarmthReport } from '../warmth/index.ts';
import { numberWords, quantityWords, rangeWords } from '../words/index.ts';
import { stateWords } from './ferment-words.ts';
import { heardWarmth } from './heard-warmth.ts';
import { useJudgement } from './use-judgement.ts';

interface WeekReplayProps {
  readonly ferment: KeptFerment;
  readonly onClose: () => void;
}

const hourMs = 3_600_000;

/** A ferment's week again: one strip with a cursor, and what was known at that hour, judged by the readings up to it. */
export function WeekReplay({ ferment, onClose }: WeekReplayProps) {
  const decimal = usePreferences((preferences) => preferences.decimal);
  const sliderId = useId();
  const kept = useKeptWarm();
  const { report } = useWarmthReport(ferment.fermentId, kept);
  const readings = readingsOfFerment(ferment);
  const heard = heardWarmth(ferment, report);
  const endH = Math.ceil(Math.max(1, readings.at(-1)?.timeH ?? 0, heard.at(-1)?.timeH ?? 0));
  const [chosenH, setCursor] = useState<number | null>(null);
  const cursorH = Math.min(endH, chosenH ?? endH);
  const beganMs = Date.parse(ferment.stated.beganAtIso);
  const untilThen: KeptFerment = {
    ...ferment,
    entries: ferment.entries.filter(
      ({ read }) => Date.parse(read.atIso) <= beganMs + cursorH * hourMs,
    ),
  };
  const { verdict } = useJudgement(untilThen);
  const warmth = heard.findLast(({ timeH }) => timeH <= cursorH);
  const read = readings.findLast(({ timeH, gravity }) => timeH <= cursorH && gravity !== null);
  const drawing = fermentFigure({
    readings,
    endGravity: null,
    cursorH,
    warmth: { heard, band: report?.keeping?.band ?? usualWarmthBand },
  });
  const moment = say('day {day}, hour {hour}', {
    day: 1 + Math.floor(cursorH / 24),
    hour: cursorH % 24,
  });
  return (
    <main className="place week-replay" id="place">
      <h1>{say('The week of {name}', { name: ferment.stated.name })}</h1>
      {drawing === null ? (
        <p>{say('Nothing was entered yet')}</p>
      ) : (
        <DrawnFigure drawing={drawing} caption={say('The line stands at {moment}.', { moment })} />
      )}
      <label htmlFor={sliderId}>{say('Time in the week')}</label>
      <input
        id={sliderId}
        className="week-slider"
        type="range"
        min={0}
        max={endH}
        step={1}
        value={cursorH}
        aria-valuetext={moment}
        onChange={({ target }) => setCursor(Number(target.value))}
      />
      <dl className="ferment-facts" aria-live="polite">
        <div>
          <dt>{say('Judged then')}</dt>
          <dd>{verdict === null ? say('Reading the log …') : stateWords(verdict)}</dd>
        </div>
        {warmth !== undefined && (
          <div>
            <dt>{say('Temperature')}</dt>
            <dd>{quantityWords(warmth.temperatureC, 1, '°C', decimal)}</dd>
          </div>
        )}
        {read?.gravity != null && (
          <div>
            <dt>{say('Gravity')}</dt>
            <dd>{numberWords(read.gravity, 3, decimal)}</dd>
          </div>
        )}
        {verdict?.strengthAbv != null && (
          <div>
            <dt>{say('Strength then')}</dt>
            <dd>
              {quantityWords(verdict.strengthAbv.value, 1, '% vol', decimal)} (
              {rangeWords(verdict.strengthAbv, 1, '% vol', decimal)})
            </dd>
          </div>
        )}
      </dl>
      <Button onClick={onClose}>{say('Back to the library')}</Button>
    </main>
  );
}
