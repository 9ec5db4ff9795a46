import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import { afterEach, beforeEach, expect, test } from 'vitest';
import {
  type Consent,
  consentFacts,
  installConsent,
} from '../../../scripts/testing/install-consent.ts';
import { runCommand } from '../../../scripts/testing/run-command.ts';
import { projectRoot } from '../../../scripts/testing/step.ts';
import {
  aptPrefix,
  findTool,
  isOnPath,
  provideSystemTools,
  systemTools,
} from '../../../scripts/testing/system-tools.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'system-tools-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

test('system packages are installed as root, or with a sudo that asks nothing, or not at all', () => {
  expect([
    aptPrefix('linux', 0, true),
    aptPrefix('linux', 1000, true),
    aptPrefix('linux', 1000, false),
    aptPrefix('darwin', 0, true),
  ]).toEqual([[], ['sudo', '-n'], null, null]);
});

test('a program is found on the search path and nowhere else', () => {
  expect([isOnPath('sh', '/nowhere:/bin'), isOnPath('sh', '/nowhere'), isOnPath('sh', '')]).toEqual(
    [true, false, false],
  );
});

test('yes is what was said beforehand or a clear yes at the terminal, and nothing else', async () => {
  const consent = (isTold: boolean, ci: string | undefined, answer: string | null) =>
    installConsent({ isTold, ci, ask: answer === null ? null : async () => answer }, 'May I?');
  expect(
    await Promise.all([
      consent(true, undefined, null),
      consent(false, 'true', null),
      consent(false, '1', null),
      consent(false, 'false', null),
      consent(false, undefined, null),
      consent(false, undefined, 'y'),
      consent(false, undefined, ' Yes '),
      consent(false, undefined, ''),
      consent(false, undefined, 'yesterday'),
    ]),
  ).toEqual([
    'given',
    'given',
    'given',
    'nobody',
    'nobody',
    'given',
    'given',
    'refused',
    'refused',
  ]);
});

/** Everything asked, run and said while the tools are provided on a computer that has none. */
async function provide(consent: Consent, prefix: readonly string[] | null, proves = true) {
  const asked: string[] = [];
  const ran: string[] = [];
  const said: string[] = [];
  const goesOn = await provideSystemTools({
    searchPath: folder,
    prefix,
    async consent(question) {
      asked.push(question);
      return consent;
    },
    async run(command, rest) {
      const tool = systemTools.find(({ proof }) => proof === rest);
      // What this computer has elsewhere does not count in a test of one that has none.
      const isProven = proves && tool?.program === command;
      if (tool !== undefined) return { code: isProven ? 0 : 1, output: '', tookS: 0 };
      ran.push([command, ...rest].join(' '));
      if (rest.includes('install')) {
        for (const { program } of systemTools) writeFileSync(path.join(folder, program), '');
      }
      return { code: 0, output: '', tookS: 0 };
    },
    report: (line) => said.push(line),
  });
  return { goesOn, asked, ran, said };
}

test('after a yes the missing packages are installed', async () => {
  expect(await provide('given', ['sudo', '-n'])).toEqual({
    goesOn: true,
    asked: [
      expect.stringMatching(
        /^Install chromium, socat, libreoffice-calc, libreoffice-writer, python3-pandas, .*and arduino-core-avr .*as root\?/,
      ),
    ],
    ran: [
      'sudo -n apt-get update -qq',
      'sudo -n apt-get install -y -qq --no-install-recommends chromium socat libreoffice-calc libreoffice-writer python3-pandas python3-matplotlib r-base-core r-cran-readr r-cran-ggplot2 gcc-avr avr-libc arduino-core-avr',
    ],
    said: [expect.stringContaining('Installing')],
  });
});

test('after a no nothing is installed, and the check goes on and says what will fail', async () => {
  const { goesOn, ran, said } = await provide('refused', []);
  expect({ goesOn, ran, missing: said.length }).toEqual({
    goesOn: true,
    ran: [],
    missing: systemTools.length,
  });
});

test('where packages cannot be installed nobody is asked', async () => {
  const { goesOn, asked, ran } = await provide('given', null);
  expect({ goesOn, asked, ran }).toEqual({ goesOn: true, asked: [], ran: [] });
});

test('nothing is asked of a computer that has everything', async () => {
  for (const { program } of systemTools) writeFileSync(path.join(folder, program), '');
  expect(await provide('nobody', [])).toEqual({ goesOn: true, asked: [], ran: [], said: [] });
});

test('a language without the packages that a notebook needs is not enough', async () => {
  for (const { program } of systemTools) writeFileSync(path.join(folder, program), '');
  const { asked } = await provide('refused', [], false);
  expect(asked).toEqual([
    expect.stringMatching(/^Install python3-pandas, python3-matplotlib, r-base/),
  ]);
});

test('what the system has serves where another of that name comes first, and does not serve', async () => {
  const tool = { program: 'sh', otherwise: '/bin/sh', debianPackages: [], usedFor: '', proof: [] };
  const only = (able: string) => findTool(tool, '/bin', async (command) => command === able);
  expect([await only('sh'), await only('/bin/sh'), await only('none')]).toEqual([
    'sh',
    '/bin/sh',
    null,
  ]);
  expect(await findTool(tool, '/nowhere', async () => true)).toBe('/bin/sh');
});

test('somebody is there to be asked where both ends of the terminal are one', () => {
  const there = { isTTY: true };
  expect([
    consentFacts([], { env: { CI: 'true' }, stdin: {}, stdout: there }),
    consentFacts(['--install-tools'], { env: {}, stdin: there, stdout: {} }),
    consentFacts([], { env: {}, stdin: there, stdout: there }),
  ]).toEqual([
    { isTold: false, ci: 'true', ask: null },
    { isTold: true, ci: undefined, ask: null },
    { isTold: false, ci: undefined, ask: expect.any(Function) },
  ]);
});

test('where nobody can be asked nothing is installed, and one sentence says what to do', async () => {
  expect(await provide('nobody', [])).toEqual({
    goesOn: false,
    asked: [expect.any(String)],
    ran: [],
    said: [expect.stringMatching(/npm test -- --install-tools.*apt-get install chromium socat/)],
  });
});

test('an option that is not known is refused with the usage', async () => {
  const refused = await runCommand(
    process.execPath,
    ['--import', 'tsx', 'scripts/test.ts', '--instal-tools'],
    { cwd: projectRoot },
  );
  expect(refused).toMatchObject({ code: 2, output: expect.stringContaining('--install-tools') });
});
