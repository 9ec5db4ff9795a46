import { worded } from '../wording/index.ts';
import type { FermentConclusion } from './conclude-ferment.ts';
import type { NinetyInterval } from './ferment-log.ts';
import type { FermentBelief } from './follow-ferment.ts';

/** Why a ferment is said to be in its state, in one or two sentences. */
export function whyFerment(concluded: FermentConclusion, belief: FermentBelief): string {
  const reason = reasonOf(concluded, belief);
  const warmth = warmthWords(concluded, belief);
  return warmth === null ? reason : worded('{reason} {warmth}', { reason, warmth });
}

function reasonOf(concluded: FermentConclusion, { timeH, evidence }: FermentBelief): string {
  const { state, gravity, endGravity, donePercent, perDay, strengthAbv, tellsEnd } = concluded;
  const now = gravity.value.toFixed(3);
  const end = worded('{value} ({low} to {high})', {
    value: endGravity.value.toFixed(3),
    low: endGravity.low.toFixed(3),
    high: endGravity.high.toFixed(3),
  });
  const fall = Math.max(0, perDay.value).toFixed(3);
  switch (state) {
    case 'not-started': {
      const words = worded(
        'Nothing has fermented yet that the readings could tell after {timeH} h.',
        { timeH: timeH.toFixed(0) },
      );
      return timeH > lateStartH
        ? worded(
            '{words} That is late: see whether it is warm enough and whether the yeast is alive.',
            { words },
          )
        : words;
    }
    case 'working':
      if (tellsEnd && donePercent.value > nearlyDonePercent) {
        return worded(
          'It is all but done at {now}, with the end expected near {end}: it counts as finished once it has been steady for two days.',
          { now, end },
        );
      }
      return tellsEnd
        ? worded(
            'It works: {donePercent} of what can ferment has fermented; the gravity, some {now}, falls by {fall} a day towards {end}.',
            { donePercent: percentWords(donePercent), now, fall, end },
          )
        : worded(
            "It works: it has made some {value} % vol. How far it has to go, masses and bubbles alone don't tell: measure the gravity.",
            { value: strengthAbv.value.toFixed(1) },
          );
    case 'slow':
      return concluded.isStill
        ? worded(
            'It has hardly moved in two days and may be at its end: it stands near {now}, expected {end}. Some fruit leaves as much that yeast cannot use, but a ferment that is stuck looks the same: a strip for glucose tells, or the sugar that went in.',
            { now, end },
          )
        : worded(
            'It goes on, but slowly: the gravity, some {now}, falls by only {fall} a day, and the end is expected near {end}.',
            { now, fall, end },
          );
    case 'stuck':
      return stuckWords(concluded, now, end);
    case 'finished':
      return evidence.some((piece) => piece.gravity !== null)
        ? worded(
            'It has been steady for two days at {now}, near the end that is expected, {end}.',
            { now, end },
          )
        : worded(
            'It has lost no more mass for two days, and {donePercent} of what its sugar gives is made.',
            { donePercent: percentWords(donePercent) },
          );
  }
}

/** No ferment that is well takes longer to begin [h]; common practice, no source. */
const lateStartH = 60;
/** From here on little is left to see. */
const nearlyDonePercent = 97;
/** Strength near which many yeasts give up [% vol]; common practice, no source. */
const nearTolerance = 12.5;

function stuckWords(
  { strengthAbv, tellsEnd, aboveUsualEnd, isStill }: FermentConclusion,
  now: string,
  end: string,
): string {
  if (!tellsEnd) {
    return worded(
      'It stands still, at some {value} % vol made, and nothing tells whether that is its end: measure the gravity, or say how much sugar went in.',
      { value: strengthAbv.value.toFixed(1) },
    );
  }
  const stands = isStill
    ? worded('It has been steady for two days')
    : worded('It has all but come to a stand');
  const why =
    strengthAbv.value > nearTolerance
      ? worded('its yeast may bear no more alcohol')
      : worded('warm it, stir it up and read it again before giving it up');
  const doubt =
    aboveUsualEnd < 0.01
      ? worded(' Some fruit leaves as much that yeast cannot use; a strip for glucose tells.')
      : '';
  return worded(
    '{stands} at {now}, but the end is expected near {end}: stuck? Steady is not finished; {why}.{doubt}',
    { stands, now, end, why, doubt },
  );
}

/** Warmth is the first thing to look at when a ferment does not go on [°C]. Source for the heat: Ferreira, Am. J. Enol. Vitic. 10 (1959) 1. */
const tooColdC = 16;
const tooHotC = 34;

function warmthWords({ state }: FermentConclusion, { temperatureC }: FermentBelief): string | null {
  if (state === 'finished' || temperatureC === null) return null;
  if (temperatureC < tooColdC && state !== 'working') {
    return worded('At {temperature} °C it is cold for yeast: keep it warmer.', {
      temperature: temperatureC.toFixed(0),
    });
  }
  return temperatureC > tooHotC
    ? worded('At {temperature} °C it is too hot: yeast dies, and ferments get stuck.', {
        temperature: temperatureC.toFixed(0),
      })
    : null;
}

function percentWords({ low, value, high }: NinetyInterval): string {
  const to = (percent: number) => Math.min(100, Math.max(0, percent)).toFixed(0);
  return worded('{value} % ({low} to {high} %)', {
    value: to(value),
    low: to(low),
    high: to(high),
  });
}
