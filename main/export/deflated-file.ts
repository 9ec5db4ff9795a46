import { once } from 'node:events';
import { createDeflateRaw } from 'node:zlib';
import { ZipPassThrough } from 'fflate';

/** The format number of compressed content (APPNOTE.TXT 4.4.5). */
const deflated = 8;

/**
 * A file of an archive that the system's own zlib compresses, beside this thread: a third of the time that the same takes in JavaScript. The
 * archive counts and checks what goes in; what comes out reaches it as it comes.
 */
export class DeflatedFile extends ZipPassThrough {
  override compression = deflated;
  readonly #deflate = createDeflateRaw({ level: 6 });

  constructor(path: string) {
    super(path);
    this.#deflate.on('data', (piece: Uint8Array<ArrayBuffer>) => this.ondata(null, piece, false));
  }

  /** Called with each piece once it is counted; compressing it is for {@link settled} to wait for. */
  protected override process(piece: Uint8Array<ArrayBuffer>, isLast: boolean): void {
    if (piece.length > 0) this.#deflate.write(piece);
    if (isLast) this.#deflate.end();
  }

  /** Once there is room for more, or all is through. */
  async settled(isLast: boolean): Promise<void> {
    if (isLast) {
      if (!this.#deflate.readableEnded) await once(this.#deflate, 'end');
      this.ondata(null, new Uint8Array(), true);
    } else if (this.#deflate.writableNeedDrain) await once(this.#deflate, 'drain');
  }
}
