import { beforeAll, describe, expect, test } from 'vitest';
import { sameWithinS, verdictRows } from '../../../renderer/compare/verdict-rows.ts';
import {
  changeAsRecorded,
  changedParts,
  whatIfRun,
} from '../../../renderer/compare/what-if-change.ts';
import { checkDraft } from '../../../renderer/compare/what-if-draft.ts';
import type { Film, RecordedRun } from '../../../renderer/replay/film.ts';
import { filmOf, simulatedRecord } from '../support/simulated-film.ts';

let record: RecordedRun;
let film: Film;

beforeAll(async () => {
  record = simulatedRecord({ name: 'pear', pressureKPa: 99.4, seed: 1 });
  film = await filmOf(record);
});

describe('whatIfRun', () => {
  test('under the recorded suppositions every call is the recorded one', async () => {
    const same = await filmOf(whatIfRun(film, changeAsRecorded(film.settings)));
    expect(same.verdicts).toEqual(film.verdicts);
    expect(verdictRows(film.verdicts, same.verdicts).some((row) => row.isDifferent)).toBe(false);
  });

  test('with a higher limit the heat-off prompt comes earlier, and the record stays as it was', async () => {
    const before = JSON.stringify(film.verdicts);
    const change = { ...changeAsRecorded(film.settings), leastStrengthAbv: 88 };
    const supposed = await filmOf(whatIfRun(film, change));
    const called = ({ verdicts }: Film) =>
      verdicts.alarms.find(({ alarm }) => alarm === 'plateau-departure')?.raisedS ?? 0;
    expect(called(film) - called(supposed)).toBeGreaterThan(120);
    expect(supposed.identity.origin).toBe('what-if');
    expect(JSON.stringify(film.verdicts)).toBe(before);
  });

  test('another pressure leaves out what would put the old one back; other changes keep it', () => {
    const pressureRead = {
      kind: 'mark' as const,
      timeS: 5,
      markId: 90,
      mark: { type: 'pressure-read' as const, pressureKPa: 99.4 },
    };
    const run: RecordedRun = { ...record, inputs: [pressureRead, ...record.inputs] };
    const recorded = changeAsRecorded(record.identity.settings);
    const { inputs } = whatIfRun(run, { ...recorded, pressureKPa: 95 });
    expect(inputs.length).toBe(record.inputs.length);
    expect(whatIfRun(run, { ...recorded, plates: 3 }).inputs).toBe(run.inputs);
  });
});

describe('verdictRows', () => {
  const later = (byS: number): Film['verdicts'] => ({
    ...film.verdicts,
    stages: film.verdicts.stages.map((span) => ({
      ...span,
      fromS: span.fromS === 0 ? 0 : span.fromS + byS,
      toS: span.toS === null ? null : span.toS + byS,
    })),
    alarms: film.verdicts.alarms.map((alarm) => ({ ...alarm, raisedS: alarm.raisedS + byS })),
  });
  const different = (verdicts: Film['verdicts']) =>
    verdictRows(film.verdicts, verdicts).filter(({ isDifferent }) => isDifferent).length;

  test('takes what comes a few seconds earlier or later for the same call, and shows when both came', () => {
    expect([1, -1, sameWithinS].map((byS) => different(later(byS)))).toEqual([0, 0, 0]);
    expect(different(later(sameWithinS + 1))).toBe(
      verdictRows(film.verdicts, film.verdicts).length - 1,
    );
    const shown = verdictRows(film.verdicts, later(1)).filter(
      ({ recorded, supposed }) => recorded !== supposed,
    );
    expect(shown.length).toBeGreaterThan(3);
  });

  test('takes a call that did not come, or came once more, for another', () => {
    const { alarms, verdict } = film.verdicts;
    expect(alarms.length).toBeGreaterThan(0);
    const changes = [
      { alarms: alarms.slice(1) },
      { alarms: [...alarms, alarms[0]!] },
      { verdict: { ...verdict, mainFraction: !verdict.mainFraction } },
    ];
    expect(changes.map((change) => different({ ...film.verdicts, ...change }))).toEqual([1, 1, 1]);
  });
});

describe('changedParts', () => {
  test('names what differs', () => {
    const recorded = changeAsRecorded(record.identity.settings);
    expect(changedParts(recorded, { ...recorded, pressureKPa: 95, plates: null })).toEqual([
      'air pressure',
      'plates',
    ]);
    expect(changedParts(recorded, recorded)).toEqual([]);
  });
});

describe('checkDraft', () => {
  test('reads decimal comma and empty plates, and says what is out of range', () => {
    expect(checkDraft({ pressureKPa: '95,5', leastStrengthAbv: '85', plates: ' ' })).toEqual({
      change: { pressureKPa: 95.5, leastStrengthAbv: 85, plates: null },
      problems: {},
    });
    expect(checkDraft({ pressureKPa: '95', leastStrengthAbv: '85', plates: '0' }).change).toEqual({
      pressureKPa: 95,
      leastStrengthAbv: 85,
      plates: 0,
    });
    expect(checkDraft({ pressureKPa: '9', leastStrengthAbv: 'x', plates: '41' })).toEqual({
      change: null,
      problems: {
        pressureKPa: 'Between 60 and 110 kPa.',
        leastStrengthAbv: 'Between 10 and 96 % vol.',
        plates: 'Between 0 and 40, or empty.',
      },
    });
  });
});
