import { type FileLayer, nodeFileLayer } from '#main';

/** The disk, which may give nothing for a while. */
export function breakableDisk() {
  let isBroken = false;
  const files: FileLayer = {
    ...nodeFileLayer,
    read: async (target, offset, length) =>
      isBroken
        ? { ok: false, error: { kind: 'failed', path: target, message: 'EIO' } }
        : nodeFileLayer.read(target, offset, length),
  };
  return {
    files,
    breakDown: () => {
      isBroken = true;
    },
    mend: () => {
      isBroken = false;
    },
  };
}
