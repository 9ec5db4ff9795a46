import {
  contractLimits,
  fail,
  type RequestAnswer,
  type RequestBody,
  type Result,
  type Service,
  type ServiceProblem,
  say,
} from '#shared-core';
import { toBase64 } from './base64.ts';

/** A file as the browser gives it: read in pieces, never whole. */
export interface SentFile {
  readonly size: number;
  slice(from: number, to: number): { arrayBuffer(): Promise<ArrayBuffer> };
}

export type ImportSays = Omit<RequestBody<'imports/finish'>, 'importId'>;

/** Sends a file piece by piece and has a run made of it. */
export async function sendFile(
  service: Service,
  file: SentFile,
  says: ImportSays,
  onShare: (share: number) => void,
): Promise<Result<RequestAnswer<'imports/finish'>, ServiceProblem>> {
  const problem = sizeProblem(file.size);
  if (problem !== null) return fail({ kind: 'request-invalid', message: problem });
  const begun = await service.request('imports/begin', { bytes: file.size });
  if (!begun.ok) return begun;
  const { importId } = begun.value;
  for (let from = 0; from < file.size; from += contractLimits.pieceBytes) {
    const bytes = await readPiece(file, from);
    if (!bytes.ok) {
      void service.request('imports/cancel', { importId });
      return bytes;
    }
    const added = await service.request('imports/add', { importId, base64: toBase64(bytes.value) });
    if (!added.ok) return added;
    onShare(added.value.receivedBytes / file.size);
  }
  return service.request('imports/finish', { importId, ...says });
}

/** A sentence on a file that is not taken, without its full stop; null when it is. */
export function sizeProblem(bytes: number): string | null {
  if (bytes === 0) return say('the file is empty');
  if (bytes <= contractLimits.importBytes) return null;
  const megabytes = (size: number) => Math.round(size / 1e6);
  return say(
    'the file has {megabytes} MB, and at most {megabytes2} MB can be taken in. Export a part of it, or every tenth reading',
    { megabytes: megabytes(bytes), megabytes2: megabytes(contractLimits.importBytes) },
  );
}

/** A file on a stick that was pulled out, or that changed meanwhile, can't be read any more. */
async function readPiece(
  file: SentFile,
  from: number,
): Promise<Result<Uint8Array, ServiceProblem>> {
  try {
    const piece = await file
      .slice(from, Math.min(file.size, from + contractLimits.pieceBytes))
      .arrayBuffer();
    return { ok: true, value: new Uint8Array(piece) };
  } catch {
    const message = say('the file can’t be read any more; choose it again');
    return fail({ kind: 'request-invalid', message });
  }
}
