/** Where a mark stands and the sign it is drawn with. */
export interface PlacedSign {
  readonly x: number;
  readonly sign: string;
}

/** Signs that stand together because each alone would cover its neighbour. */
export interface SignGroup {
  readonly x: number;
  readonly text: string;
}

/** More signs than this side by side say less than their number. */
const mostTogether = 3;

/** Joins signs, in order of `x`, that would overlap at `signPx` each, into groups centred over their marks. */
export function groupSigns(signs: readonly PlacedSign[], signPx: number): readonly SignGroup[] {
  let groups: readonly (readonly PlacedSign[])[] = [];
  for (const sign of signs) {
    let group: readonly PlacedSign[] = [sign];
    let before = groups.at(-1);
    // A group that grew may now reach the one before it.
    while (before && distance(before, group) < (signPx * (shown(before) + shown(group))) / 2) {
      group = [...before, ...group];
      groups = groups.slice(0, -1);
      before = groups.at(-1);
    }
    groups = [...groups, group];
  }
  return groups.map((group) => ({ x: middle(group), text: textOf(group) }));
}

function middle(group: readonly PlacedSign[]): number {
  return group.reduce((sum, { x }) => sum + x, 0) / group.length;
}

function distance(one: readonly PlacedSign[], other: readonly PlacedSign[]): number {
  return middle(other) - middle(one);
}

/** Places a group takes, counted in signs. */
function shown(group: readonly PlacedSign[]): number {
  return Math.min(group.length, mostTogether);
}

function textOf(group: readonly PlacedSign[]): string {
  const signs = group.map(({ sign }) => sign);
  if (signs.length <= mostTogether) return signs.join('');
  return `${signs[0]}+${signs.length - 1}`;
}
