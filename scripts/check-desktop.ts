/**
 * Packs the desktop program as the packager does, looks at every file that goes into it, and runs its main process where a strict
 * stand-in takes the place of the runtime. Says what is wrong, and how large the archive is.
 *
 * Usage: npm run check-desktop
 */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import { buildIfStale } from './building/build-if-stale.ts';
import { electronTarget, projectRoot, windowTarget } from './building/build-targets.ts';
import { lookIntoArchive, unpackArchive } from './desktop/look-into-archive.ts';
import { packOnStandIn } from './desktop/pack-on-stand-in.ts';
import type { WindowPlay } from './desktop/play-window.ts';

/** An export pack without fonts, figures or report is smaller. */
const leastPackBytes = 100_000;

const folder = mkdtempSync(path.join(tmpdir(), 'desktop-'));
try {
  process.exitCode = await check();
} finally {
  rmSync(folder, { recursive: true, force: true });
}

async function check(): Promise<number> {
  for (const target of [windowTarget, electronTarget]) {
    await buildIfStale(target, { root: projectRoot, report: (line) => console.error(line) });
  }
  const { version } = JSON.parse(
    readFileSync(path.join(projectRoot, 'node_modules', 'electron', 'package.json'), 'utf8'),
  ) as { version: string };
  const resources = await packOnStandIn(folder, version);
  const { bytes, packages, complaints } = lookIntoArchive(resources);
  console.log(`app.asar: ${(bytes / 1e6).toFixed(1)} MB; the largest in it:`);
  for (const [name, size] of packages.slice(0, 5)) {
    console.log(`  ${(size / 1e6).toFixed(1).padStart(5)} MB  ${name}`);
  }
  const found = [...complaints, ...complaintsOf(await runUnpacked(resources))];
  for (const complaint of found) console.error(complaint);
  console.log(found.length === 0 ? 'The packed program is sound.' : `${found.length} complaints`);
  return found.length === 0 ? 0 : 1;
}

function complaintsOf(play: Partial<WindowPlay> & { readonly failed?: string }): readonly string[] {
  if (play.failed !== undefined) return [`The program failed: ${play.failed}`];
  const { refused = [], packBytes = 0, loaded = 0 } = play;
  console.log(`Run under the stand-in: ${JSON.stringify(play)}`);
  return [
    ...refused.map((url) => `The page asks for ${url}, which is not there.`),
    ...(loaded < 3 ? ['The page loads neither script nor style.'] : []),
    ...(packBytes < leastPackBytes ? [`The export pack has only ${packBytes} bytes.`] : []),
  ];
}

/** Runs the program as it was packed, without any package but those inside. */
async function runUnpacked(resources: string): Promise<Partial<WindowPlay> & { failed?: string }> {
  const unpacked = path.join(folder, 'program');
  const { main } = unpackArchive(resources, unpacked);
  const standIn = path.join(unpacked, 'node_modules', 'electron');
  mkdirSync(standIn);
  writeFileSync(
    path.join(standIn, 'package.json'),
    JSON.stringify({ name: 'electron', type: 'module', exports: './stand-in-electron.mjs' }),
  );
  const { build } = await import('vite');
  await build({
    configFile: false,
    root: projectRoot,
    logLevel: 'error',
    ssr: { noExternal: true },
    build: {
      ssr: path.join(import.meta.dirname, 'desktop', 'stand-in-electron.ts'),
      outDir: standIn,
      emptyOutDir: false,
      rolldownOptions: {
        output: { entryFileNames: 'stand-in-electron.mjs', codeSplitting: false },
      },
    },
  });
  const home = path.join(folder, 'home');
  mkdirSync(home);
  const child = spawn(process.execPath, [main, home, `--runs-folder=${path.join(home, 'runs')}`], {
    cwd: home,
    stdio: ['ignore', 'pipe', 'pipe'],
    env: { PATH: process.env.PATH, HOME: home },
  });
  let output = '';
  for (const stream of [child.stdout, child.stderr]) {
    stream.setEncoding('utf8').on('data', (part: string) => {
      output += part;
    });
  }
  await once(child, 'close');
  const told = /^told (.*)$/m.exec(output)?.[1];
  return told === undefined ? { failed: output.slice(-2000) } : JSON.parse(told);
}
