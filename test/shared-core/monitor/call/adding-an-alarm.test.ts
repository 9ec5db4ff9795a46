import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import { pathToFileURL } from 'node:url';
import ts from 'typescript';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { runCommand } from '../../../../scripts/testing/run-command.ts';
import { projectRoot } from '../../../../scripts/testing/step.ts';

const callFolder = path.join('shared-core', 'monitor', 'call');
const listFile = path.join(callFolder, 'alarm-list.ts');

/** The first of the two files that a new alarm takes. */
const newAlarm = `import { celsius } from '../words/numbers.ts';
import type { AlarmDefinition } from './alarm-definition.ts';

export const headWarm = {
  id: 'head-warm',
  title: 'Head warm',
  act: 'Look at the head.',
  consequence: 'Nobody has looked.',
  caution: null,
  priority: 'high',
  onDelayS: 0,
  offDelayS: 0,
  asksForHeatOff: true,
  isAnsweredByHeatOff: true,
  mayBeShelved: false,
  waitsForHead: true,
  lingers: false,
  condition: ({ facts: { head } }) => head !== null && head.bulbC > 40,
  reason: ({ head }) => ({
    because: \`The head is at \${head === null ? 'unknown' : celsius(head.bulbC)}.\`,
    wouldChangeIf: 'A head below 40 °C.',
  }),
  sentence: () => 'The head is warm.',
} as const satisfies AlarmDefinition;
`;

/** Warms the head past 40 °C and tells what has become of the new alarm. */
const probe = `const core = await import('./shared-core/index.ts');
const { decodeRecord } = await import('./shared-core/run-log/decode-record.ts');
const { verdictsSchema } = await import('./shared-core/snapshot/index.ts');
const monitor = core.createMonitor(core.defaultRunSettings);
for (let timeS = 0; timeS < 60; timeS += 1) {
  const value = 20 + timeS / 2 + (timeS % 3) / 16;
  monitor.push({ kind: 'reading', timeS, channel: 'head', value, unit: '°C', quality: 'good' });
}
const mark = { type: 'alarm-shelved', alarm: 'head-warm', forS: 300 };
monitor.push({ kind: 'mark', timeS: 60, markId: 1, mark });
const change = monitor.takeChanges().find(({ kind }) => kind === 'alarm-changed');
const { line } = core.encodeRecord({ kind: 'change', change }, { seq: 0, monoS: 0, wallMs: 0 }, '00000000');
const { sentence, act, alarms } = monitor.snapshot();
console.log(JSON.stringify({
  order: core.mostUrgentFirst.slice(
    core.mostUrgentFirst.indexOf('head-warm') - 1,
    core.mostUrgentFirst.indexOf('head-warm') + 2,
  ),
  title: core.alarmTitles['head-warm'],
  worded: [sentence, act, alarms.map(({ alarm, state, consequence }) => [alarm, state, consequence])],
  recorded: verdictsSchema.parse(monitor.verdicts()).alarms.map(({ alarm, because }) => [alarm, because]),
  logged: decodeRecord(line.trimEnd()).record.body.change.record.alarm,
}));
`;

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'another-alarm-'));
  for (const name of ['shared-core', 'renderer', 'package.json', 'tsconfig.json']) {
    cpSync(path.join(projectRoot, name), path.join(folder, name), { recursive: true });
  }
  symlinkSync(path.join(projectRoot, 'node_modules'), path.join(folder, 'node_modules'));
  writeFileSync(path.join(folder, callFolder, 'head-warm.ts'), newAlarm);
  const list = readFileSync(path.join(folder, listFile), 'utf8');
  // The second file: the alarm is imported, and put in its place.
  writeFileSync(
    path.join(folder, listFile),
    `import { headWarm } from './head-warm.ts';\n${list.replace('  overLimit,\n', '  overLimit,\n  headWarm,\n')}`,
  );
  writeFileSync(path.join(folder, 'probe.mjs'), probe);
});
afterAll(() => rmSync(folder, { recursive: true }));

const aWhile = { timeout: 300_000 };

test(
  'a new alarm, its own file and a line of the list, is ordered, named, worded and recorded',
  aWhile,
  async () => {
    const tsx = pathToFileURL(path.join(projectRoot, 'node_modules', 'tsx', 'dist', 'loader.mjs'));
    const { output } = await runCommand(process.execPath, ['--import', tsx.href, 'probe.mjs'], {
      cwd: folder,
    });
    expect(JSON.parse(output)).toEqual({
      order: ['over-limit', 'head-warm', 'probe-lost'],
      title: 'Head warm',
      // It may not be put aside, so it stands although that was tried.
      worded: [
        'The head is warm.',
        'Look at the head.',
        [['head-warm', 'unacknowledged', 'Nobody has looked.']],
      ],
      recorded: [['head-warm', expect.stringMatching(/^The head is at 4\d\.\d °C\.$/)]],
      logged: 'head-warm',
    });
  },
);

test(
  'nothing else in shared-core or the window has to name it for the types to hold',
  aWhile,
  async () => {
    const tsc = path.join(projectRoot, 'node_modules', 'typescript', 'bin', 'tsc');
    const { output } = await runCommand(process.execPath, [tsc, '-p', 'renderer'], { cwd: folder });
    expect(output).toBe('');
  },
);

test('an alarm that leaves something out is named by the compiler', aWhile, () => {
  const file = path.join(folder, callFolder, 'head-warm.ts');
  writeFileSync(file, newAlarm.replace("  act: 'Look at the head.',\n", ''));
  // The file alone: all the others were right a moment ago.
  const { config } = ts.readConfigFile(path.join(folder, 'tsconfig.json'), ts.sys.readFile);
  const { options } = ts.convertCompilerOptionsFromJson(config.compilerOptions, folder);
  const program = ts.createProgram([file], options);
  const found = program.getSemanticDiagnostics(program.getSourceFile(file));
  expect(ts.formatDiagnostics(found, ts.createCompilerHost(options))).toMatch(
    /head-warm\.ts[^\n]*\n\s*Property 'act' is missing/,
  );
});
