import {
  type RequestAnswer,
  type RequestBody,
  type Result,
  type Service,
  type ServiceProblem,
  succeed,
} from '#shared-core';
import { fromBase64 } from './base64.ts';

/** What a pack is doing, and how far it is. */
export interface PackStep {
  readonly doing: string;
  /** 0 … 1 */
  readonly share: number;
}

export interface FetchedPack {
  readonly fileName: string;
  readonly content: Blob;
  /** What the file lacks; null where it lacks nothing. */
  readonly problem: Extract<ServiceProblem, { kind: 'file-incomplete' }> | null;
}

/** Part of the way that is left for bringing the finished pack into the window. */
const fetchingShare = 0.1;

/** A pack of runs or of ferments, the files of one run as they are, or one run as a table. */
export type WantedPack =
  | { readonly runIds: readonly string[] }
  | { readonly fermentIds: readonly string[] }
  | { readonly filesOf: string }
  | { readonly tableOf: string; readonly format: TableFormat };

export type TableFormat = RequestBody<'packs/make-table'>['format'];

function make(service: Service, packId: string, wanted: WantedPack) {
  if ('filesOf' in wanted) {
    return service.request('packs/make-files', { packId, runId: wanted.filesOf });
  }
  if ('fermentIds' in wanted) {
    return service.request('packs/make-ferments', {
      packId,
      fermentIds: [...wanted.fermentIds],
    });
  }
  if ('tableOf' in wanted) {
    const { tableOf, format } = wanted;
    return service.request('packs/make-table', { packId, runId: tableOf, format });
  }
  return service.request('packs/make', { packId, runIds: [...wanted.runIds] });
}

/** Has a pack made and brings it here piece by piece. */
export async function fetchPack(
  service: Service,
  packId: string,
  wanted: WantedPack,
  onStep: (step: PackStep) => void,
): Promise<Result<FetchedPack, ServiceProblem>> {
  const stop = service.on('pack', (progress) => {
    if (progress.packId !== packId) return;
    const share = ((1 - fetchingShare) * progress.done) / progress.total;
    onStep({ doing: progress.doing, share });
  });
  const made = await make(service, packId, wanted);
  stop();
  if (!made.ok) return made;
  const { fileName, bytes } = made.value;
  const pieces: Uint8Array<ArrayBuffer>[] = [];
  for (let fromByte: number | null = 0; fromByte !== null; ) {
    onStep({ doing: fileName, share: 1 - fetchingShare + (fetchingShare * fromByte) / bytes });
    const read: Result<RequestAnswer<'packs/read'>, ServiceProblem> = await service.request(
      'packs/read',
      { packId, fromByte },
    );
    if (!read.ok) return read;
    pieces.push(fromBase64(read.value.base64));
    fromByte = read.value.nextByte;
  }
  void service.request('packs/drop', { packId });
  const type = 'tableOf' in wanted ? 'text/csv;charset=utf-8' : 'application/zip';
  return succeed({ fileName, content: new Blob(pieces, { type }), problem: lacking(made.value) });
}

function lacking(made: Partial<RequestAnswer<'packs/make-table'>>): FetchedPack['problem'] {
  const { missing, wording } = made;
  return missing === undefined ? null : { kind: 'file-incomplete', message: missing, wording };
}
