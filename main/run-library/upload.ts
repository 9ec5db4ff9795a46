import {
  contractLimits,
  fail,
  type Result,
  type ServiceProblem,
  succeed,
  worded,
} from '#shared-core';

/** Files on their way in, piece by piece. There is one person at the bench, so a new file replaces the last. */
export interface Uploads {
  begin(bytes: number): Result<string, ServiceProblem>;
  /** Answers how many bytes have come so far. */
  add(importId: string, piece: Uint8Array): Result<number, ServiceProblem>;
  /** The whole file; it is let go of, whatever becomes of it. */
  take(importId: string): Result<Uint8Array, ServiceProblem>;
  drop(importId: string): void;
}

interface Upload {
  readonly importId: string;
  readonly content: Uint8Array;
  receivedBytes: number;
}

/** Keeps at most one file of {@link contractLimits.importBytes} in memory. */
export function createUploads(): Uploads {
  let open: Upload | null = null;
  let begun = 0;

  const find = (importId: string): Result<Upload, ServiceProblem> =>
    open?.importId === importId
      ? succeed(open)
      : invalid(worded('the file is no longer here; choose it again'));

  return {
    begin(bytes) {
      if (bytes > contractLimits.importBytes) return invalid(worded('the file is too large'));
      begun += 1;
      open = { importId: `import-${begun}`, content: new Uint8Array(bytes), receivedBytes: 0 };
      return succeed(open.importId);
    },
    add(importId, piece) {
      const found = find(importId);
      if (!found.ok) return found;
      const upload = found.value;
      if (upload.receivedBytes + piece.length > upload.content.length) {
        open = null;
        return invalid(worded('the file grew while it was being read; choose it again'));
      }
      upload.content.set(piece, upload.receivedBytes);
      upload.receivedBytes += piece.length;
      return succeed(upload.receivedBytes);
    },
    take(importId) {
      const found = find(importId);
      if (!found.ok) return found;
      open = null;
      const { content, receivedBytes } = found.value;
      return receivedBytes === content.length
        ? succeed(content)
        : invalid(worded('the file has not come whole; choose it again'));
    },
    drop(importId) {
      if (open?.importId === importId) open = null;
    },
  };
}

function invalid(message: string): Result<never, ServiceProblem> {
  return fail({ kind: 'request-invalid', message });
}
