/**
 * The loopback shell, with a system call that never returns: a pipe is opened that nobody writes to.
 *
 * Usage: node --import tsx stuck-program.ts WINDOW_FOLDER RUNS_FOLDER PIPE
 */
import { readFile } from 'node:fs';
import process from 'node:process';
import { runLoopback } from '../../../../app/loopback/run-loopback.ts';

const [windowFolder = '', runsFolder = '', pipe = ''] = process.argv.slice(2);
readFile(pipe, () => {});
await runLoopback({ version: '0.1.0', windowFolder, runsFolder, port: 0, open: false });
