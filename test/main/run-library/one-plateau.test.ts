import { describe, expect, test } from 'vitest';
import {
  type LogBody,
  measuredWords,
  packReading,
  type RunInput,
  type RunSummary,
  studyRun,
} from '#shared-core';
import { runFacts } from '../../../renderer/compare/run-facts.ts';
import { exercisesOf } from '../../../shared-core/exercises/exercises-of.ts';
import { reportOf } from '../../../shared-core/report/report-of.ts';
import { filmOf } from '../../renderer/support/simulated-film.ts';
import { pearRun } from '../../shared-core/report/support/pear-run.ts';
import { libraryWithRun } from '../support/library-with-run.ts';
import { logHeader } from '../support/log-header.ts';

const { run } = pearRun();
/** A corrected probe: whoever forgets the correction tells another plateau. */
const settings = { ...run.settings, probe: { ...run.settings.probe, offsetK: 0.4 } };

async function libraryPlateau(
  inputs: readonly RunInput[],
  endS: number,
): Promise<RunSummary['plateau']> {
  const bodies: readonly LogBody[] = [
    { kind: 'header', header: { ...logHeader('a'), settings } },
    ...inputs.map(
      (input): LogBody =>
        input.kind === 'reading' ? { kind: 'readings', readings: [packReading(input)] } : input,
    ),
    { kind: 'end', timeS: endS, how: 'clean' },
  ];
  const library = await libraryWithRun('a', bodies);
  const listed = await library.list();
  if (!listed.ok) throw new Error(listed.error.kind);
  return listed.value[0]?.plateau ?? null;
}

describe('the plateau of a run', () => {
  test('is one and the same in the library, the comparison, the report and the key', async () => {
    const study = studyRun({ ...run, settings });
    const { inputs, endS } = run;
    const film = await filmOf({
      identity: { origin: 'replay', runId: 'a', name: 'a', startedAtIso: null, settings },
      inputs,
      endS,
    });
    const { plateau } = study;
    if (plateau === null) throw new Error('no plateau');
    expect(runFacts(film).plateau).toEqual(plateau);
    expect(await libraryPlateau(inputs, endS)).toEqual(plateau.mean);
    const words = measuredWords(plateau.mean, '°C');
    expect(JSON.stringify(reportOf([study]))).toContain(words);
    const asked = exercisesOf(study, 'undergraduate').find(({ id }) => id.endsWith('pressure'));
    expect(JSON.stringify(asked)).toContain(words);
  });

  test('of a head that climbs past the limit at once is none anywhere', async () => {
    const inputs = run.inputs.map((input) =>
      input.kind === 'reading' && input.value > 70 ? { ...input, value: input.value + 12 } : input,
    );
    const study = studyRun({ ...run, settings, inputs });
    expect(study.verdicts.verdict.mainFraction).toBe(false);
    expect(study.plateau).toBe(null);
    expect(await libraryPlateau(inputs, run.endS)).toBe(null);
  });
});
