/** A stage's stretch of the strip's foot [px], and what it may be called there. */
export interface StageRoom {
  readonly left: number;
  readonly width: number;
  readonly fullName: string;
  readonly shortName: string;
}

/** What the foot of the strip allows [px]. */
export interface FootMeasures {
  readonly height: number;
  readonly letterPx: number;
  readonly textPx: number;
}

export interface StageName {
  readonly text: string;
  /** Else it stands on its side. */
  readonly isUpright: boolean;
}

/** A name on its side is as wide as its type is high, with its rim [of the type's height]. */
const sideShare = 1.1;
/** Of a stage narrower than this its name would hide all there is [of the type's height]; chosen here. */
const leastShare = 0.35;
/** The room of a full stop [of the type's height]. */
const stopShare = 0.3;
/** Fewer letters say nothing. */
const leastLetters = 3;

/**
 * A name for each stage: the whole one where it fits, else the short one, else that on its side, and in a stage narrower than its letters
 * too as long as no neighbour's name stands there; null where nothing fits.
 */
export function stageNames(
  stages: readonly StageRoom[],
  foot: FootMeasures,
): readonly (StageName | null)[] {
  const within = stages.map((stage) => nameWithin(stage, foot));
  const taken = stages.flatMap((stage, index) => spanOf(stage, within[index] ?? null, foot));
  return stages.map((stage, index) => {
    const inside = within[index] ?? null;
    if (inside !== null || stage.width < leastShare * foot.textPx) return inside;
    const name = onItsSide(stage.shortName, foot);
    const [span] = spanOf(stage, name, foot);
    if (!span || taken.some(({ from, to }) => span.from < to && from < span.to)) return null;
    taken.push(span);
    return name;
  });
}

function nameWithin(
  { width, fullName, shortName }: StageRoom,
  foot: FootMeasures,
): StageName | null {
  const { letterPx, textPx } = foot;
  if ((fullName.length + 1.5) * letterPx <= width) return { text: fullName, isUpright: true };
  if ((shortName.length + 1) * letterPx <= width) return { text: shortName, isUpright: true };
  return width >= sideShare * textPx ? onItsSide(shortName, foot) : null;
}

/** As much of it as the foot is high, with a full stop where something is left out. */
function onItsSide(name: string, { height, letterPx, textPx }: FootMeasures): StageName | null {
  if (name.length * letterPx <= height) return { text: name, isUpright: false };
  const letters = Math.floor((height - stopShare * textPx) / letterPx);
  if (letters < leastLetters) return null;
  return { text: `${name.slice(0, letters)}.`, isUpright: false };
}

/** From where to where a name reaches [px]; nothing without one. */
function spanOf(
  { left, width }: StageRoom,
  name: StageName | null,
  { letterPx, textPx }: FootMeasures,
): readonly { readonly from: number; readonly to: number }[] {
  if (name === null) return [];
  const half = (name.isUpright ? name.text.length * letterPx : sideShare * textPx) / 2;
  const middle = left + width / 2;
  return [{ from: middle - half, to: middle + half }];
}
