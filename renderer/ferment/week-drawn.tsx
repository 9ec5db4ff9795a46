import {
  type FermentVerdict,
  fermentFigure,
  type KeptFerment,
  readingsOfFerment,
  say,
  usualWarmthBand,
  type WarmthReport,
} from '#shared-core';
import { DrawnFigure } from '../figures/index.ts';
import { heardWarmth } from './heard-warmth.ts';

interface WeekDrawnProps {
  readonly ferment: KeptFerment;
  readonly endGravity: FermentVerdict['expectedEndGravity'];
  /** How warm it was kept; null where that can't be read. */
  readonly warmth: WarmthReport | null;
}

/** The week of a ferment as a picture; nothing before its first reading. */
export function WeekDrawn({ ferment, endGravity, warmth }: WeekDrawnProps) {
  const heard = heardWarmth(ferment, warmth);
  const drawing = fermentFigure({
    readings: readingsOfFerment(ferment),
    endGravity,
    // The band that was asked for holds before anything is heard, too.
    warmth: { heard, band: warmth?.keeping?.band ?? usualWarmthBand },
  });
  return (
    drawing && (
      <DrawnFigure
        drawing={drawing}
        caption={say('As entered, gravities at 20 °C. Intervals hold nine times in ten.')}
      />
    )
  );
}
