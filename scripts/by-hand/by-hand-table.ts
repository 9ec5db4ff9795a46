import { type Tag, tags } from './draw-by-hand.ts';
import type { CallJudgement } from './judge-call.ts';
import { knownVapours } from './known-vapour.ts';
import type { ByHandScore, Share, ToldTruth } from './score-by-hand.ts';
import { thresholdRules } from './threshold-rules.ts';

/** A scored run with what it is. */
export interface TaggedScore {
  readonly tags: readonly Tag[];
  readonly score: ByHandScore;
}

/** Says in a line where truths fell in what was told, run by run; who measures other runs says it the same way. */
export interface CalibrationWords {
  strengths(name: string, runs: readonly (readonly ToldTruth[])[]): string;
  timesLeft(name: string, runs: readonly (readonly ToldTruth[])[]): string;
}

const judgements: readonly CallJudgement[] = ['good', 'late', 'missed', 'false', 'spell'];
/** A pot called nearly dry with more than this share of its charge is called so wrongly. */
const dryShare = 0.25;

/** Everything measured, all runs first and then by what they are. */
export function byHandTable(
  runs: readonly TaggedScore[],
  calibration: CalibrationWords,
): readonly string[] {
  const groups = tags.map((tag) => ({
    name: tag as string,
    scores: runs.filter((run) => run.tags.includes(tag)).map(({ score }) => score),
  }));
  const all = { name: 'all', scores: runs.map(({ score }) => score) };
  const rows = [all, ...groups.filter(({ scores }) => scores.length > 0)];
  const titles = [
    'this monitor',
    '… or above the limit',
    ...thresholdRules.map(({ name }) => name),
    ...knownVapours.map(({ name }) => name),
  ];
  return [
    'first heat-off call: good / late / missed / false / early, but in a weak spell',
    [''.padEnd(26), ...titles.map((title) => title.padEnd(30))].join(''),
    ...rows.map(({ name, scores }) => callRow(name, scores)),
    '',
    ...rows.map(({ name, scores }) => figuresRow(name, scores)),
    '',
    ...rows.map(({ name, scores }) =>
      calibration.timesLeft(
        `${name}, forecast`,
        scores.map(({ timesLeft }) => timesLeft),
      ),
    ),
    '',
    ...rows.map(({ name, scores }) =>
      calibration.strengths(
        `${name}, strength`,
        scores.map(({ strengths }) => strengths),
      ),
    ),
  ];
}

function callRow(name: string, scores: readonly ByHandScore[]): string {
  const mains = scores.filter(({ call }) => call !== 'none').length;
  const count = (of: (score: ByHandScore) => CallJudgement | undefined): string =>
    judgements
      .map((judgement) => scores.filter((score) => of(score) === judgement).length)
      .join(' / ')
      .padEnd(30);
  return [
    `${name} (${scores.length}, mains ${mains})`.padEnd(34),
    count(({ call }) => call),
    count(({ anyCall }) => anyCall),
    ...thresholdRules.map((_, index) => count(({ rules }) => rules[index])),
    ...knownVapours.map((_, index) => count(({ known }) => known[index])),
  ].join('');
}

function figuresRow(name: string, scores: readonly ByHandScore[]): string {
  const total = (of: (score: ByHandScore) => number): number =>
    scores.reduce((sum, score) => sum + of(score), 0);
  const share = (of: (score: ByHandScore) => Share): string => {
    const all = total((score) => of(score).of);
    return all === 0 ? '–' : `${((100 * total((score) => of(score).count)) / all).toFixed(1)} %`;
  };
  const hours = total((score) => score.hours);
  const perHour = (of: (score: ByHandScore) => number): string => (total(of) / hours).toFixed(2);
  const flatHours = total((score) => score.flatHours);
  const endings = total((score) => score.endingsOnFlat);
  return [
    name.padEnd(20),
    `strength held ${share(({ covered }) => covered)}, told ${share(({ told }) => told)}`,
    `stages ${share(({ stages }) => stages)}`,
    `verdict wrong ${scores.filter(({ verdictRight }) => verdictRight === false).length}`,
    `surging/h ${perHour(({ surging }) => surging)}`,
    `alarms/h ${perHour(({ alarms }) => alarms)}`,
    `flaps/h stages ${perHour(({ stageFlaps }) => stageFlaps)} events ${perHour(({ eventFlaps }) => eventFlaps)}`,
    `left wrongly ${share(({ recededWrongly }) => recededWrongly)}`,
    `ending on flat/h ${flatHours > 0 ? (endings / flatHours).toFixed(2) : '–'} (${flatHours.toFixed(1)} h)`,
    `forecast held ${share(({ forecasts }) => forecasts)}`,
    `dry with charge ${scores.filter(({ dryCalledWith }) => (dryCalledWith ?? 0) > dryShare).length}`,
    `cool-down while distilling ${scores.filter(({ coolDownWhileDistilling }) => coolDownWhileDistilling).length}`,
  ].join(' | ');
}
