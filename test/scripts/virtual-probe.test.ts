import { spawn, spawnSync } from 'node:child_process';
import { createInterface } from 'node:readline';
import { describe, expect, test } from 'vitest';
import { pearFermentSetup } from '#shared-core';
import { projectRoot } from '../../scripts/testing/step.ts';
import { stillInWords } from '../../scripts/virtual-probe/still-in-words.ts';
import { parseVirtualProbeOptions } from '../../scripts/virtual-probe/virtual-probe-options.ts';

const command = ['scripts/run.mjs', 'virtual-probe'];
const usual = {
  rig: 'glass-bead-column',
  speed: 1,
  seed: 1,
  link: null,
  cold: false,
  help: false,
} as const;

describe('the virtual probe', () => {
  test('runs in real time unless told otherwise, because the window records real time', () => {
    expect(parseVirtualProbeOptions([])).toEqual({ ok: true, value: usual });
  });

  test.each([
    [['--rig', 'samovar'], /--rig is one of: simple-head, /],
    [['--speed', '0'], /--speed is a number from 1 to 240/],
    [['--seed', '1.5'], /--seed is a whole number/],
    [['--sped', '3'], /Unknown option '--sped'/],
  ])('says what is wrong with %j', (commandLine, words) => {
    const parsed = parseVirtualProbeOptions(commandLine);
    expect(parsed.ok ? '' : parsed.error).toMatch(words);
  });

  test('tells charge and pressure, and of a faster still that the window will get it wrong', () => {
    const { charge, pressureKPa } = pearFermentSetup();
    const words = stillInWords(usual).join('\n');
    expect(words).toContain(`${charge.volumeMl} mL of ${charge.strengthAbv} % vol`);
    expect(words).toContain(`${pressureKPa} kPa`);
    expect(words).not.toContain('wrong');
    expect(stillInWords({ ...usual, speed: 20 }).join('\n')).toContain('forecasts will be wrong');
  });

  test('answers --help with its options and where it can run, and a wrong option without a stack', () => {
    const ask = (...words: readonly string[]) =>
      spawnSync(process.execPath, [...command, ...words], { cwd: projectRoot, encoding: 'utf8' });
    const helped = ask('--help');
    expect([helped.status, helped.stderr]).toEqual([0, '']);
    expect(helped.stdout).toMatch(/--speed N[\s\S]*default: 1[\s\S]*Windows has none/);
    const refused = ask('--sped', '3');
    expect([refused.status, /^\s+at /m.test(refused.stderr)]).toEqual([2, false]);
  });

  test('prints the path of its line first, then what must be known of the still', async () => {
    const running = spawn(process.execPath, command, { cwd: projectRoot });
    try {
      const first = (stream: NodeJS.ReadableStream) =>
        new Promise<string>((done) => createInterface({ input: stream }).once('line', done));
      const [path, still] = await Promise.all([first(running.stdout), first(running.stderr)]);
      expect(path).toMatch(/^\/dev\//);
      expect(still).toMatch(/^In the pot: 250 mL of 11 % vol\. Air pressure: 99\.4 kPa/);
    } finally {
      running.kill('SIGINT');
    }
  });
});
