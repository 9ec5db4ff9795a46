import { type RunSettings, type StillMoment, say } from '#shared-core';
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
      ? say(
          'Up to the last booking {percent} of the charge’s ethanol has come over, at {meanStrength} on average: going on adds ethanol and takes away strength.',
          {
            percent: words.range(percent, 0, '%'),
            meanStrength: words.range(now.meanStrengthAbv, 0, '% vol'),
          },
        )
      : say(
          'Nothing is booked yet: book a volume in the receiver, and this curve shows how much of the ethanol has come over, and how strong it is.',
        );
  const leastMeanAbv =
    settings.stop.kind === 'purity-against-recovery' ? settings.stop.leastMeanStrengthAbv : null;
  return (
    <FigureFrame
      title={say('Strength against recovery so far')}
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
        title={say('Collected so far')}
        rows={[
          [say('Booked'), now ? words.quantity(now.volumeMl, 1, 'mL') : say('nothing')],
          [
            say('Mean strength'),
            now ? words.range(now.meanStrengthAbv, 0, '% vol') : say('not known'),
          ],
          [say('Share of the ethanol'), percent ? words.range(percent, 0, '%') : say('not known')],
          [
            say('Drip rate'),
            moment.dripRateMlPerMin
              ? words.range(moment.dripRateMlPerMin, 1, 'mL/min')
              : say('not known'),
          ],
        ]}
      />
    </FigureFrame>
  );
}
