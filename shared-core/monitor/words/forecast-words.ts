import { assertNever } from '../../result/index.ts';
import type { TwinOutlook } from '../../twin/index.ts';
import { worded } from '../../wording/index.ts';
import type { ForecastDoubt } from '../conclude/forecast-check.ts';

/** A mark is asked for only when it would narrow the range by this share. */
const worthAsking = 0.2;
/** Who has just read it is left in peace [s]; chosen here. */
const askAgainAfterS = 300;

/** Asks for a reading of the receiver when that would narrow the forecast most; null otherwise. */
export function volumeWouldHelp(ahead: TwinOutlook, sinceVolumeS: number): string | null {
  if (ahead.volumeWouldNarrow < worthAsking || sinceVolumeS < askAgainAfterS) return null;
  return worded('Read the volume to narrow this by {percent} %.', {
    percent: 10 * Math.round(10 * ahead.volumeWouldNarrow),
  });
}

/** The twin holds the limit for passed while the fraction goes on: there is no time to tell. */
export function passedWords(): string {
  return worded(
    'By the model the limit is passed, by the head it is not: no end is told. Go by the head.',
  );
}

/** Why the range is wider than the model would have it, or why no end is told. */
export function doubtWords(doubt: ForecastDoubt, isTold: boolean): string {
  const follows = isTold
    ? worded('the range is wider for it')
    : worded('no end is told until it does');
  return worded(
    'This still does not behave as the model expects: {why}; {follows}. Go by the head.',
    {
      why: whyWords(doubt),
      follows,
    },
  );
}

function whyWords(doubt: ForecastDoubt): string {
  switch (doubt.kind) {
    case 'end':
      return movedWords(doubt);
    case 'head':
      return worded('from one minute to the next the head is {kelvins} K off what was expected', {
        kelvins: doubt.usualK.toFixed(1),
      });
    case 'offset':
      return offsetWords(Math.abs(doubt.offsetK).toFixed(1), doubt.offsetK > 0);
    default:
      return assertNever(doubt);
  }
}

function movedWords({
  sinceS,
  movedS,
}: {
  readonly sinceS: number;
  readonly movedS: number;
}): string {
  const minutes = (seconds: number): string => `${Math.max(1, Math.round(seconds / 60))} min`;
  const values = { after: minutes(sinceS), by: minutes(Math.abs(movedS)) };
  return movedS > 0
    ? worded('after {after} of boiling the end lies {by} later than was expected then', values)
    : worded('after {after} of boiling the end lies {by} earlier than was expected then', values);
}

/** The model cannot tell them apart. By simulation, plates that full heat had filled stay poorer by half a kelvin for a whole plateau. */
function offsetWords(kelvins: string, isHigh: boolean): string {
  return isHigh
    ? worded(
        'its head stands {kelvins} K higher than the model can explain, as over a column that still had full heat when vapour came, or by a probe that shows too much',
        { kelvins },
      )
    : worded(
        'its head stands {kelvins} K lower than the model can explain, as by a probe that shows too little or an air pressure that is lower than stated',
        { kelvins },
      );
}
