import { cpSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { z } from 'zod';
import { buildIfStale } from '../building/build-if-stale.ts';
import { loopbackTarget, projectRoot, windowTarget } from '../building/build-targets.ts';
import { installedBytes } from './installed-bytes.ts';

const lockSchema = z.object({
  packages: z.record(
    z.string(),
    z.object({
      dev: z.boolean().optional(),
      devOptional: z.boolean().optional(),
      link: z.boolean().optional(),
    }),
  ),
});

/** What a start of the browser shell needs on the disk. */
export interface LaidOut {
  /** Started with the folder of runs as its one argument, by Node alone. */
  readonly program: string;
  /** Packages that `npm ci --omit=dev` installs here, by their folders below the project. */
  readonly packages: readonly string[];
  /** On the disk, as unpacked [bytes]. */
  readonly packagesBytes: number;
  readonly builtBytes: number;
  /** What `npm ci` installs for working on the program. */
  readonly workshopBytes: number;
}

/** Lays the built browser shell out in a folder of its own, with the packages that remain when tools are left out and nothing else. */
export async function layOutProgram(folder: string): Promise<LaidOut> {
  for (const target of [windowTarget, loopbackTarget]) {
    await buildIfStale(target, { root: projectRoot, report: (line) => console.error(line) });
  }
  const lock = path.join(projectRoot, 'package-lock.json');
  const { packages } = lockSchema.parse(JSON.parse(readFileSync(lock, 'utf8')));
  const needed = Object.entries(packages).flatMap(([at, { dev, devOptional }]) =>
    at === '' || dev === true || devOptional === true ? [] : [at],
  );
  // Made for another system, npm passes over some of them.
  const installed = needed.filter((at) => installedBytes(path.join(projectRoot, at)) > 0);
  const outermost = installed.filter(
    (at) => !installed.some((other) => at.startsWith(`${other}/`)),
  );
  for (const at of [...outermost, '.build/renderer', '.build/loopback', 'package.json']) {
    cpSync(path.join(projectRoot, at), path.join(folder, at), { recursive: true });
  }
  mkdirSync(path.join(folder, 'home'), { recursive: true });
  const program = path.join(folder, 'start-built.mjs');
  writeFileSync(program, launcher);
  return {
    program,
    packages: installed,
    packagesBytes: installedBytes(path.join(folder, 'node_modules')),
    builtBytes: installedBytes(path.join(folder, '.build')),
    workshopBytes: installedBytes(path.join(projectRoot, 'node_modules')),
  };
}

const launcher = `
import { runLoopback } from './.build/loopback/loopback.mjs';
await runLoopback({
  version: '0.1.0',
  windowFolder: new URL('./.build/renderer', import.meta.url).pathname,
  runsFolder: process.argv[2],
  port: 0,
  open: false,
  probeProgram: new URL('./.build/loopback/probe.mjs', import.meta.url),
  deskProgram: new URL('./.build/loopback/desk.mjs', import.meta.url),
});
`;
