import { type DrawnPoint, type PlateauBand, say } from '#shared-core';
import { useWords } from '../words/index.ts';
import { type BandNames, bandNames } from './band-names.ts';
import { type Fan, fanLines, traceLines } from './lines-on-strip.ts';
import { usePlotFrame } from './plot-frame.ts';
import { useStripMeasures } from './strip-text.ts';

interface NamesBesideLines {
  /** On the probe's own scale. */
  readonly band: PlateauBand | null;
  readonly drawn: readonly DrawnPoint[];
  readonly nowS: number;
  /** From where and to when the forecast reaches. */
  readonly forecast: Omit<Fan, 'limitC'> | null;
}

/** The band's names beside what the run has drawn so far; null before the first layout. */
export function useBandNames(props: NamesBesideLines): BandNames | null {
  const { band, drawn, nowS, forecast } = props;
  const frame = usePlotFrame();
  const measures = useStripMeasures();
  const words = useWords();
  if (!frame || !band) return null;
  const { limitC, azeotropeC, leastStrengthAbv } = band;
  const strength = words.quantity(leastStrengthAbv, 0, '% vol');
  const nowX = frame.xOf(nowS);
  return bandNames(
    {
      limitY: frame.yOf(limitC),
      azeotropeY: frame.yOf(azeotropeC),
      // What it is goes before where it is: that can be read off the axis.
      limitTexts: [
        say('{strength} at {limit}', { strength, limit: words.quantity(limitC, 1, '°C') }),
        strength,
      ],
      azeotropeTexts: [
        say('azeotrope at {azeotrope}', { azeotrope: words.quantity(azeotropeC, 1, '°C') }),
        say('azeotrope'),
      ],
    },
    frame,
    measures,
    [
      ...traceLines(drawn, frame),
      ...(forecast ? fanLines(frame, { ...forecast, limitC }) : []),
      [
        [nowX, frame.top],
        [nowX, frame.bottom],
      ],
    ],
  );
}
