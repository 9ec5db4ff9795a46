import { type Snapshot, textsInSnapshot, wordingOf } from '#shared-core';

type Wording = ReturnType<typeof wordingOf>;

/**
 * What the texts of each snapshot were made from. Most snapshots say word for word what the one before said, since the monitor
 * concludes once a second and windows are told more often: then it is the same object.
 */
export function createSnapshotWording(): (snapshot: Snapshot) => Wording {
  let before: readonly string[] = [];
  let wording: Wording = {};
  return (snapshot) => {
    const texts = textsInSnapshot(snapshot);
    const isSame =
      texts.length === before.length && texts.every((text, index) => text === before[index]);
    if (!isSame) wording = wordingOf(texts);
    before = texts;
    return wording;
  };
}
