import type { RequestBody } from '#shared-core';
import { saveFile } from '../exchange/index.ts';
import type { ConnectedService } from '../service/index.ts';
import type { BenchStore } from '../stores/index.ts';

export type ExportFormat = RequestBody<'runs/export'>['format'];

/** Asks for a run as a table and hands it to the browser's downloads. */
export async function exportRun(
  service: ConnectedService,
  bench: BenchStore,
  runId: string,
  format: ExportFormat,
): Promise<void> {
  const answer = await service.request('runs/export', { runId, format });
  if (!answer.ok) {
    bench.getState().dispatch({ type: 'problem', problem: answer.error });
    return;
  }
  const { fileName, mediaType, content } = answer.value;
  saveFile(fileName, new Blob([content], { type: mediaType }));
}
