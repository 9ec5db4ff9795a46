import type { Mark, MarkBody } from '#shared-core';
import type { HeatMark, VirtualStill } from './virtual-still.ts';

/** Does to a virtual still what a person marks: its heat, and its receivers. What is undone had not been done. */
export interface RigHands {
  follow(mark: Pick<Mark, 'markId' | 'mark'>): void;
  /** What has run into the receiver that stands there now [mL], as a measuring cylinder is read. */
  receiverMl(): number;
}

interface Done {
  readonly markId: number;
  readonly heat: HeatMark | null;
  /** What had come over in all when a receiver was put there [mL]. */
  readonly receiverFromMl: number | null;
}

/** A cylinder for what a school distils is read to half a millilitre; common practice, no source. */
const readToMl = 0.5;

export function createRigHands(still: VirtualStill): RigHands {
  let done: readonly Done[] = [];
  const standingHeat = () => done.findLast(({ heat }) => heat !== null)?.heat ?? 'heat-off';

  function undo(withdrawnMarkId: number): void {
    const before = standingHeat();
    done = done.filter(({ markId }) => markId !== withdrawnMarkId);
    const after = standingHeat();
    if (after !== before) still.heat(after);
  }

  return {
    follow({ markId, mark }) {
      if (mark.type === 'mark-withdrawn') undo(mark.withdrawnMarkId);
      else if (isHeatMark(mark.type)) {
        done = [...done, { markId, heat: mark.type, receiverFromMl: null }];
        still.heat(mark.type);
      } else if (mark.type === 'receiver-changed') {
        done = [...done, { markId, heat: null, receiverFromMl: still.distilledMl() }];
      }
    },
    receiverMl() {
      const fromMl = done.findLast((item) => item.receiverFromMl !== null)?.receiverFromMl ?? 0;
      return readToMl * Math.round((still.distilledMl() - fromMl) / readToMl);
    },
  };
}

function isHeatMark(type: MarkBody['type']): type is HeatMark {
  return type === 'heat-on' || type === 'heat-eased' || type === 'heat-off';
}
