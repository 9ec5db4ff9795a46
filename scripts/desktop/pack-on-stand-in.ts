import { chmodSync, mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { Arch, build, Platform } from 'electron-builder';
import { projectRoot } from '../building/build-targets.ts';

/** Where the packager finds the switches it sets in the runtime: this text, a version, how many, and one digit for each. */
const fuseMark = 'dL7pKGdnNz796PbbjQWNKmHXBZaB9tsX';
const fuses = 9;

/** Packs the app for Linux as the packager does, with a runtime that only looks like one; answers where its resources are. */
export async function packOnStandIn(folder: string, electronVersion: string): Promise<string> {
  const runtime = path.join(folder, 'runtime');
  mkdirSync(path.join(runtime, 'resources'), { recursive: true });
  const program = Buffer.concat([
    Buffer.from([0x7f, 0x45, 0x4c, 0x46]),
    Buffer.alloc(64),
    Buffer.from(fuseMark, 'latin1'),
    Buffer.from([1, fuses]),
    Buffer.from('0'.repeat(fuses), 'latin1'),
  ]);
  writeFileSync(path.join(runtime, 'electron'), program);
  chmodSync(path.join(runtime, 'electron'), 0o755);
  writeFileSync(path.join(runtime, 'version'), electronVersion);
  for (const name of ['LICENSE', 'LICENSES.chromium.html']) {
    writeFileSync(path.join(runtime, name), '');
  }
  const output = path.join(folder, 'packed');
  await build({
    projectDir: projectRoot,
    targets: Platform.LINUX.createTarget('dir', Arch.x64),
    publish: 'never',
    config: {
      extends: path.join(projectRoot, 'electron-builder.yml'),
      electronDist: runtime,
      electronVersion,
      directories: { output },
    },
  });
  return path.join(output, 'linux-unpacked', 'resources');
}
