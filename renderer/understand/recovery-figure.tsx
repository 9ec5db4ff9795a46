import type { RunSettings, StillMoment } from '#shared-core';
import { FigureFrame, NumbersTable, StrengthAgainstShare } from '../figures/index.ts';
import { useWords } from '../words/index.ts';

interface RecoveryFigureProps {
  readonly moment: StillMoment;
  readonly settings: RunSettings;
}

/** Mean strength of what was collected, against the share of the ethanol it holds. */
export function RecoveryFigure({ moment, settings }: RecoveryFigureProps) {
  const words = useWords();
  const points = moment.recovery;
  const now = points[points.length - 1] ?? null;
  const percent = now && {
    low: 100 * now.recovery.low,
    high: Math.min(100, 100 * now.recovery.high),
  };
  const sentence =
    now && percent
      ? `Up to the last booking ${words.range(percent, 0, '%')} of the charge’s ethanol has come over, at ${words.range(now.meanStrengthAbv, 0, '% vol')} on average: going on adds ethanol and takes away strength.`
      : 'Nothing is booked yet: book a volume in the receiver, and this curve shows how much of the ethanol has come over, and how strong it is.';
  const leastMeanAbv =
    settings.stop.kind === 'purity-against-recovery' ? settings.stop.leastMeanStrengthAbv : null;
  return (
    <FigureFrame
      title="Strength against recovery so far"
      sentence={sentence}
      drawing={
        <StrengthAgainstShare
          points={points.map(({ recovery, meanStrengthAbv }) => ({
            share: recovery.value,
            strengthAbv: meanStrengthAbv,
          }))}
          leastMeanAbv={leastMeanAbv}
          reached={now?.recovery ?? null}
          description={sentence}
        />
      }
    >
      <NumbersTable
        title="Collected so far"
        rows={[
          ['Booked', now ? words.quantity(now.volumeMl, 1, 'mL') : 'nothing'],
          ['Mean strength', now ? words.range(now.meanStrengthAbv, 0, '% vol') : 'not known'],
          ['Share of the ethanol', percent ? words.range(percent, 0, '%') : 'not known'],
          [
            'Drip rate',
            moment.dripRateMlPerMin
              ? words.range(moment.dripRateMlPerMin, 1, 'mL/min')
              : 'not known',
          ],
        ]}
      />
    </FigureFrame>
  );
}
