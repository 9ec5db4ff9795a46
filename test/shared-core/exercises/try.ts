import { variedRuns } from './support/varied-runs.ts';
import { readSheet } from './support/printed-sheet.ts';
import { solveQuestion } from './support/solve-question.ts';
import { exerciseLevels, exercisesOf, studyRun, worksheetOf } from '#shared-core';
const asked = new Map<string, number>();
for (const [name, run] of variedRuns()) {
  let study;
  try { study = studyRun(run); } catch (e) { console.log('MONITOR', name, String(e).slice(0,90)); continue; }
  if (!study.verdicts.verdict.mainFraction && study.plateau !== null) console.log('PLATEAU', name, study.plateau.mean.value, study.verdicts.verdict.because);
  for (const level of exerciseLevels) {
    const sheet = readSheet(worksheetOf(study, level));
    const enlarged = readSheet(worksheetOf(study, 'school')).questions.find(({ title }) => title === 'Read the plateau')?.figure ?? null;
    for (const [i, { id, answer }] of exercisesOf(study, level).entries()) {
      asked.set(id, (asked.get(id) ?? 0) + 1);
      let found: readonly number[] = [];
      try { found = solveQuestion(sheet.questions[i]!, sheet.curve, enlarged); } catch (e) { console.log('THROW', name, id, String(e).slice(0, 300)); continue; }
      const ok = found.length === answer.quantities.length && answer.quantities.every(({ value, tolerance }, at) => Math.abs(found[at]! - value) <= tolerance);
      if (!ok) console.log('WRONG', name, id, found.map((v) => v.toFixed(3)).join(' '), '|', answer.words);
    }
  }
}
console.log(Object.fromEntries(asked));
