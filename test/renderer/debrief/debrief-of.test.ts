import { describe, expect, test } from 'vitest';
import { createMonitor, type Mark, type MarkBody, type RunInput } from '#shared-core';
import { debriefOf, type EndedRun } from '../../../renderer/debrief/debrief-of.ts';
import { afterLimitWords, reactionWords } from '../../../renderer/debrief/debrief-words.ts';
import { simulatedRun } from '../../support/simulated-run.ts';

const { settings, inputs } = simulatedRun({ name: 'pear', pressureKPa: 99.4, seed: 1 });
const readings = inputs.filter(({ kind }) => kind === 'reading');

let markIds = 0;
const mark = (timeS: number, body: MarkBody): Mark => {
  markIds += 1;
  return { kind: 'mark', timeS, markId: markIds, mark: body };
};

/** The simulated readings with these marks among them, gone through by the monitor. */
function ended(marks: readonly Mark[], endS = readings.at(-1)?.timeS ?? 0): EndedRun {
  const all: RunInput[] = [...readings.filter(({ timeS }) => timeS <= endS), ...marks].sort(
    (a, b) => a.timeS - b.timeS,
  );
  const monitor = createMonitor(settings);
  for (const input of all) monitor.push(input);
  return {
    settings,
    inputs: all,
    verdicts: monitor.verdicts(),
    endS,
    plateau: monitor.snapshot().plateau,
  };
}

const heatOn = mark(1, { type: 'heat-on' });
const untouched = ended([heatOn]);
const raisedS =
  untouched.verdicts.alarms.find(({ alarm }) => alarm === 'plateau-departure')?.raisedS ?? 0;

describe('the debrief of a run', () => {
  test('tells how long the hand took after the prompt', () => {
    expect(raisedS).toBeGreaterThan(1000);
    const { reaction } = debriefOf(ended([heatOn, mark(raisedS + 12, { type: 'heat-off' })]));
    expect(reaction).toEqual({ kind: 'answered', raisedS, reactionS: 12 });
    expect(reactionWords(reaction)).toMatch(/^12 s after the prompt at 0:\d\d:\d\d$/);
  });

  test('tells heat that went off before any prompt, was never marked, or was never asked for', () => {
    const early = raisedS - 300;
    const kinds = [
      debriefOf(ended([heatOn, mark(early, { type: 'heat-off' })], early + 60)),
      debriefOf(untouched),
      debriefOf(ended([heatOn], early)),
    ].map(({ reaction }) => reaction.kind);
    expect(kinds).toEqual(['before-prompt', 'not-marked', 'no-prompt']);
  });

  test('takes a flame that was put back for one that heats: it asks for no prompt, and what came after the limit came', () => {
    const away = (atS: number) => [
      mark(atS, { type: 'heat-off' }),
      mark(atS + 40, { type: 'heat-on' }),
    ];
    const byHand = [heatOn, ...away(raisedS - 600), ...away(raisedS - 300)];
    expect(debriefOf(ended(byHand, raisedS - 200)).reaction).toEqual({ kind: 'no-prompt' });
    const { afterLimit } = debriefOf(ended(byHand));
    expect(afterLimit).toEqual(debriefOf(untouched).afterLimit);
    if (afterLimit.kind !== 'some') throw new Error(afterLimit.kind);
    const passedS = untouched.endS - afterLimit.overS;
    const putBack = [...away(passedS + 30), mark(passedS + 200, { type: 'heat-off' })];
    expect(debriefOf(ended([heatOn, ...putBack], passedS + 260)).afterLimit).toMatchObject({
      kind: 'some',
      overS: 200,
    });
  });

  test('counts what came over after the limit at the mean rate of its receiver, as a range', () => {
    const { afterLimit } = debriefOf(untouched);
    if (afterLimit.kind !== 'some') throw new Error(afterLimit.kind);
    const passedS = untouched.endS - afterLimit.overS;
    expect(passedS).toBeGreaterThan(raisedS);
    const offS = passedS + 30;
    const late = debriefOf(
      ended(
        [
          heatOn,
          mark(offS, { type: 'heat-off' }),
          mark(offS + 5, { type: 'receiver-changed', volumeMl: 31 }),
        ],
        offS + 60,
      ),
    );
    expect(late.afterLimit).toMatchObject({ kind: 'some', overS: 30 });
    const volumeMl = late.afterLimit.kind === 'some' ? late.afterLimit.volumeMl : null;
    // 31 mL in the half hour and more since vapour came: not a millilitre in half a minute.
    expect(volumeMl?.low).toBeGreaterThan(0.1);
    expect(volumeMl?.high).toBeLessThan(1.5);
    expect(afterLimitWords(late.afterLimit, ',')).toMatch(/^0,\d–[01],\d\smL, in 30 s/);
  });

  test('promises no volume where none was written down, and none at all where the heat was off in time', () => {
    expect(debriefOf(untouched).afterLimit).toMatchObject({ kind: 'some', volumeMl: null });
    const early = ended([heatOn, mark(raisedS, { type: 'heat-off' })], raisedS + 20);
    expect(debriefOf(early).afterLimit).toEqual({ kind: 'not-reached' });
    const cooled = ended([heatOn, mark(raisedS, { type: 'heat-off' })]);
    expect(debriefOf(cooled).afterLimit).toEqual({ kind: 'none' });
  });

  test('lists each receiver with its strength, and what was measured after the run counts', () => {
    const run = ended([heatOn, mark(raisedS, { type: 'receiver-changed', volumeMl: 31 })]);
    const [first] = debriefOf(run).cuts;
    expect(first).toMatchObject({ number: 1, strengthFrom: 'head-temperature' });
    const measured = mark(run.endS, {
      type: 'strength-read',
      alcoholByVolume: 88,
      sampleTemperatureC: 20,
    });
    expect(debriefOf(run, [measured]).cuts[0]).toMatchObject({ strengthFrom: 'measured' });
  });
});
