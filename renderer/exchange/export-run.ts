import type { ConnectedService } from '../service/index.ts';
import type { BenchStore } from '../stores/index.ts';
import { fetchPack, type TableFormat } from './fetch-pack.ts';
import { saveFile } from './save-file.ts';

export type ExportFormat = TableFormat;

/** Asks for a run as a table and hands it to the browser's downloads. */
export async function exportRun(
  service: ConnectedService,
  bench: BenchStore,
  runId: string,
  format: ExportFormat,
): Promise<void> {
  const fetched = await fetchPack(
    service,
    crypto.randomUUID(),
    { tableOf: runId, format },
    () => {},
  );
  if (!fetched.ok) {
    bench.getState().dispatch({ type: 'problem', problem: fetched.error });
    return;
  }
  const { fileName, content, problem } = fetched.value;
  saveFile(fileName, content);
  if (problem !== null) bench.getState().dispatch({ type: 'problem', problem });
}
