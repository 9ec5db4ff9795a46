/**
 * Services that record, for whoever measures what holds them up: answers each message `{ id, name, body }` as a commanding window
 * would be answered.
 *
 * Usage: fork of recording-program.ts RUNS_FOLDER
 */
import process from 'node:process';
import { forkDesk, forkProbeWorker, systemClock } from '#main';
import { composeServices } from '../../app/compose-services.ts';
import { watchLongestPiece } from './longest-piece.ts';
import { longestPieceRequest, savedRequest } from './recording-services.ts';

export interface Asked {
  readonly id: number;
  readonly name: string;
  readonly body: unknown;
}

const [runsFolder = ''] = process.argv.slice(2);
const session = await composeServices({
  shell: 'loopback',
  version: '0.1.0',
  runsFolder,
  startWorker: () => forkProbeWorker(),
  startDesk: () => forkDesk(),
});
const piece = watchLongestPiece();
process.on('message', ({ id, name, body }: Asked) => {
  if (name === longestPieceRequest) {
    process.send?.({ id, result: { ok: true, value: piece.takeMs() } });
    return;
  }
  if (name === savedRequest) {
    const { savedToS } = session.recordingStatus();
    const value = { savedToS, atS: systemClock.monotonicS() };
    process.send?.({ id, result: { ok: true, value } });
    return;
  }
  void session.handle(name, body, { mayCommand: true }).then((result) => {
    process.send?.({ id, result });
  });
});
process.on('disconnect', () => void session.close().then(() => process.exit(0)));
process.send?.({ id: 0, result: { ok: true, value: {} } });
