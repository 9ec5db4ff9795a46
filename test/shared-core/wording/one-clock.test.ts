import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { createMonitor, type RunInput, studyRun } from '#shared-core';
import { codeIn } from '../../../scripts/checks/files-in.ts';
import { markingSheetOf, worksheetOf } from '../../../shared-core/report/distillation-sheets.ts';
import { reportOf } from '../../../shared-core/report/report-of.ts';
import { simulatedRun } from '../../support/simulated-run.ts';

/** A moment told as a span: `At 132 min`, `since 8 min`, `from 90 s`. */
const momentAsSpan =
  /\b(?:at|since|from|until)\s+(?:about\s+)?\d+(?:[.,]\d+)?[\s\u00a0](?:s|min|h)\b/i;
const clock = /\b\d+:\d\d:\d\d\b/;

/** Every text in it, however deep. */
function textsIn(whole: unknown): readonly string[] {
  if (typeof whole === 'string') return [whole];
  if (typeof whole !== 'object' || whole === null) return [];
  return Object.values(whole).flatMap(textsIn);
}

describe('a run with a probe that drops out, sticks and goes silent', () => {
  const { settings, inputs, endS } = simulatedRun({ name: 'Pear', pressureKPa: 99, seed: 4 });
  const isOut = (timeS: number) => timeS % 600 > 540 && timeS < 2400;
  const troubled = inputs.flatMap((input): readonly RunInput[] => {
    if (input.kind !== 'reading') return [input];
    const { channel, timeS } = input;
    if (channel === 'pot' && timeS > 700) return [];
    if (channel === 'head' && isOut(timeS)) return [];
    return [channel === 'head' && timeS > 2500 && timeS < 2800 ? { ...input, value: 78 } : input];
  });
  const monitor = createMonitor({ ...settings, attentionCheckS: 600 });
  const said: string[] = [];
  let next = 0;
  for (let timeS = 0; timeS <= endS; timeS += 10) {
    for (; (troubled[next]?.timeS ?? Infinity) <= timeS; next += 1) {
      const input = troubled[next];
      if (input !== undefined) monitor.push(input);
    }
    said.push(...textsIn(monitor.advanceTo(timeS)));
  }
  said.push(...textsIn(monitor.takeChanges()), ...textsIn(monitor.verdicts()));
  const study = studyRun({
    runId: 'a',
    name: 'Pear',
    startedAtIso: '',
    rehearsal: false,
    settings,
    appVersion: '0',
    modelVersion: '1',
    inputs: troubled,
    endS,
  });
  const sheets = {
    'sentences, prompts and their log': said,
    report: textsIn(reportOf([study])),
    'worksheet for schools': textsIn(worksheetOf(study, 'school')),
    'worksheet for undergraduates': textsIn(worksheetOf(study, 'undergraduate')),
    'marking sheet': textsIn(markingSheetOf(study, 'school')),
  };

  test.each(Object.entries(sheets))('tells every moment as a clock in its %s', (_, texts) => {
    expect([...new Set(texts.filter((text) => momentAsSpan.test(text)))]).toEqual([]);
  });

  test('has moments to tell, of a probe that is gone and of a channel that is silent', () => {
    expect(said.some((text) => /^At 0:\d\d:\d\d: the probe sends nothing/.test(text))).toBe(true);
    expect(said.some((text) => /sent nothing since 0:11:40;/.test(text))).toBe(true);
    expect(sheets.report.filter((text) => clock.test(text)).length).toBeGreaterThan(5);
  });
});

test('no source writes a moment of a run in another form than the clock', () => {
  const root = path.join(import.meta.dirname, '../../..');
  const written =
    /\b(?:at|since|from|until)\s+(?:about\s+)?(?:\$\{|\{' '\}\s*\{)(?:span|durationWords|words\.duration|Math\.round)\([^}]*(?:\/ 60\)\} min|[sS]\)\})/gi;
  const found = codeIn(root, ['renderer', 'shared-core', 'main', 'app']).flatMap((file) =>
    (readFileSync(path.join(root, file), 'utf8').match(written) ?? []).map(
      (words) => `${file}: ${words}`,
    ),
  );
  expect(found).toEqual([]);
  expect(`At \${span(timeS)}: gone`.match(written)).toHaveLength(1);
  expect(`from \${Math.round(fromS / 60)} min`.match(written)).toHaveLength(1);
});
