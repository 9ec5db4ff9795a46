import { say } from '#shared-core';
import { clearPlace, type Point } from './clear-place.ts';
import type { PlotFrame } from './plot-frame.ts';
import type { StripMeasures } from './strip-text.ts';
import { aboveLinePx, roomOfName } from './type-room.ts';

/** A name of the band where it is to be written: its baseline begins at `x`, `y`. */
export interface PlacedName {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

export interface BandNames {
  readonly limit: PlacedName;
  readonly azeotrope: PlacedName;
  /** Null where the band is too low for it, or the line leaves it no room. */
  readonly band: PlacedName | null;
}

interface BandToName {
  /** Where the band's two edges lie [px]. */
  readonly limitY: number;
  readonly azeotropeY: number;
  /** Whole and short, in the order of preference. */
  readonly limitTexts: readonly [string, string];
  readonly azeotropeTexts: readonly [string, string];
}

const longBandText = say('plateau band on this probe');
const bandText = say('plateau');
const sidePx = 10;
/** Of the type's height: these names measure 0.46 a letter. */
const letterShare = 0.5;
/** At the left, at the right, then in between: shares of the room that the name leaves beside it. */
const shares = [0, 1, 0.5, 0.25, 0.75] as const;

/**
 * Where the band's names stand clear of the lines: the head's trace, the forecast and the present moment. A
 * name that is clear nowhere is shortened, and if that does not help stands at the left, below the line.
 */
export function bandNames(
  band: BandToName,
  frame: Pick<PlotFrame, 'left' | 'right'>,
  { textPx }: Pick<StripMeasures, 'textPx'>,
  lines: readonly (readonly Point[])[],
): BandNames {
  const { limitY, azeotropeY, limitTexts, azeotropeTexts } = band;
  const whole = frame.right - frame.left - 2 * sidePx;
  const widthOf = (text: string) => text.length * letterShare * textPx;
  const named = (text: string, x: number, y: number): PlacedName => {
    return { text, x, y, width: widthOf(text) };
  };
  const place = (texts: readonly string[], baselines: readonly number[]): PlacedName | null => {
    for (const text of texts) {
      const width = widthOf(text);
      if (width > whole) continue;
      const names = baselines.flatMap((y) =>
        shares.map((share) => named(text, frame.left + sidePx + share * (whole - width), y)),
      );
      const rooms = names.map((name) => roomOfName(name, textPx));
      const clear = clearPlace(rooms, lines);
      if (clear) return names[rooms.indexOf(clear)] ?? null;
    }
    return null;
  };
  const left = frame.left + sidePx;
  const limitBaseline = limitY - aboveLinePx(textPx);
  const azeotropeBaseline = azeotropeY + 1.15 * textPx;
  const middle = (limitY + azeotropeY) / 2 + 0.35 * textPx;
  // The long name leaves most of the band to the run.
  const isWide = widthOf(longBandText) < 0.4 * (frame.right - frame.left);
  const bandTexts = isWide ? [longBandText, bandText] : [bandText];
  const isRoomy = azeotropeY - limitY > 3 * textPx;
  return {
    limit: place(limitTexts, [limitBaseline]) ?? named(limitTexts[1], left, limitBaseline),
    azeotrope:
      place(azeotropeTexts, [azeotropeBaseline]) ??
      named(azeotropeTexts[1], left, azeotropeBaseline),
    band: isRoomy
      ? place(bandTexts, [middle, limitY + 1.15 * textPx, azeotropeY - 0.4 * textPx])
      : null,
  };
}
