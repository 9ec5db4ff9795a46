import type { ExportedFile, RequestBody } from '#shared-core';
import type { ConnectedService } from '../service/index.ts';
import type { BenchStore } from '../stores/index.ts';

export type ExportFormat = RequestBody<'runs/export'>['format'];

/** Asks for a run as a file and hands it to the browser's downloads. */
export async function exportRun(
  service: ConnectedService,
  bench: BenchStore,
  runId: string,
  format: ExportFormat,
): Promise<void> {
  const answer = await service.request('runs/export', { runId, format });
  if (answer.ok) download(answer.value);
  else bench.getState().dispatch({ type: 'problem', problem: answer.error });
}

function download({ fileName, mediaType, encoding, content }: ExportedFile): void {
  const bytes =
    encoding === 'text'
      ? content
      : Uint8Array.from(atob(content), (character) => character.charCodeAt(0));
  const address = URL.createObjectURL(new Blob([bytes], { type: mediaType }));
  const link = document.createElement('a');
  link.href = address;
  link.download = fileName;
  link.click();
  // Some browsers read the address only after the click has returned.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
