import { execFile } from 'node:child_process';
import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { promisify } from 'node:util';
import { clockHz } from './simulated-board.ts';

const run = promisify(execFile);
const sketches = path.join(import.meta.dirname, '../../../scripts/reference-probe');

/** Where Debian's `arduino-core-avr` keeps what every sketch is built with. */
const boardPackage = '/usr/share/arduino/hardware/arduino/avr';
const core = path.join(boardPackage, 'cores/arduino');
const library = path.join(boardPackage, 'libraries/SPI/src');

/** The flags of the board package's own `platform.txt`. */
const options = [
  ...['-mmcu=atmega328p', `-DF_CPU=${clockHz}UL`, '-DARDUINO=10800', '-DARDUINO_ARCH_AVR'],
  ...['-Os', '-w', '-flto', '-ffunction-sections', '-fdata-sections'],
  ...[core, path.join(boardPackage, 'variants/standard'), library].map((folder) => `-I${folder}`),
];
const optionsOfC = [...options, '-std=gnu11'];
const optionsOfSketch = [...options, '-std=gnu++11', '-fno-exceptions', '-fno-threadsafe-statics'];

/** What is in a chip's memory once it bears a sketch of `scripts/reference-probe`, in whose text `changes` were made. */
export async function compileSketch(
  name: string,
  changes: Readonly<Record<string, string>> = {},
): Promise<Uint16Array> {
  const folder = await mkdtemp(path.join(tmpdir(), 'sketch-'));
  const inFolder = { cwd: folder };
  try {
    const text = await readFile(path.join(sketches, name, `${name}.ino`), 'utf8');
    await writeFile(
      path.join(folder, 'sketch.cpp'),
      `#include <Arduino.h>\n${changed(text, changes)}`,
    );
    const sources = await readdir(core);
    const inC = sources.filter((file) => file.endsWith('.c'));
    // The sketches use no String, whose source does not compile with Debian's own compiler.
    const inCpp = sources.filter((file) => file.endsWith('.cpp') && file !== 'WString.cpp');
    await run('avr-gcc', [...optionsOfC, '-c', ...inC.map(inCore)], inFolder);
    await run(
      'avr-g++',
      [
        ...optionsOfSketch,
        `-I${path.join(sketches, name)}`,
        '-Wl,--gc-sections',
        'sketch.cpp',
        path.join(import.meta.dirname, 'resting-yield.cpp'),
        path.join(library, 'SPI.cpp'),
        ...inCpp.map(inCore),
        ...inC.map((file) => file.replace(/c$/, 'o')),
        ...['-lm', '-o', 'sketch.elf'],
      ],
      inFolder,
    );
    await run('avr-objcopy', ['-O', 'binary', 'sketch.elf', 'sketch.bin'], inFolder);
    return flashWords(await readFile(path.join(folder, 'sketch.bin')));
  } finally {
    await rm(folder, { recursive: true });
  }
}

function inCore(file: string): string {
  return path.join(core, file);
}

function changed(text: string, changes: Readonly<Record<string, string>>): string {
  return Object.entries(changes).reduce((so, [from, to]) => {
    if (!so.includes(from)) throw new Error(`The sketch does not say: ${from}`);
    return so.replace(from, to);
  }, text);
}

function flashWords(image: Buffer): Uint16Array {
  const words = new Uint16Array(0x4000);
  new Uint8Array(words.buffer).set(image);
  return words;
}
