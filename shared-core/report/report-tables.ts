import { alarmTitles } from '../monitor/index.ts';
import { scaleDoubts } from '../probe/index.ts';
import { chargeDoubtMl, trialWords } from '../run/index.ts';
import { stageLabels } from '../stages/index.ts';
import type { RunStudy } from '../study/index.ts';
import { kindWords } from '../study/index.ts';
import { clockWords, localDayWords, localTimeWords, measuredWords } from '../wording/index.ts';
import type { DocumentTable } from './document.ts';
import { settingNumber } from './setting-number.ts';

const column = (title: string, width: number, align: 'start' | 'end' = 'start') => ({
  title,
  width,
  align,
});

/** Stages with their times and the tool's reasons. */
export function stagesTable({ verdicts, endS }: RunStudy): DocumentTable {
  return {
    kind: 'table',
    caption: 'Stages, and why each was called',
    columns: [
      column('Stage', 3),
      column('From', 1.2, 'end'),
      column('To', 1.2, 'end'),
      column('Because', 8),
    ],
    rows: verdicts.stages.map(({ stage, fromS, toS, because }) => [
      stageLabels[stage],
      clockWords(fromS),
      clockWords(toS ?? endS),
      because,
    ]),
  };
}

/** Alarms raised; null when there were none. */
export function alarmsTable({ verdicts }: RunStudy): DocumentTable | null {
  if (verdicts.alarms.length === 0) return null;
  return {
    kind: 'table',
    caption: 'Calls for an act',
    columns: [
      column('Call', 2.4),
      column('Raised', 1.2, 'end'),
      column('Answered', 1.4, 'end'),
      column('Because', 8),
    ],
    rows: verdicts.alarms.map(({ alarm, raisedS, acknowledgedS, because }) => [
      alarmTitles[alarm],
      clockWords(raisedS),
      acknowledgedS === null ? 'no' : clockWords(acknowledgedS),
      because,
    ]),
  };
}

function assumedWords(assumed: readonly string[] = []): string {
  return assumed.length === 0 ? '' : `; ${assumed.join(' and ')} assumed, nobody stated it`;
}

/** What was set before the run. */
export function settingsTable({
  settings,
  startedAtIso,
  endS,
  runId,
  imported,
  underWay,
  byVolume,
}: RunStudy): DocumentTable {
  const { charge, ferment, pressure, probe, rig } = settings;
  const sources = {
    barometer: ', from barometer',
    altitude: ', from altitude, ISO 2533',
    assumed: ', assumed: nobody entered one',
    channel: ', measured during the run',
    steam: ', from steam of boiling water, by this probe',
  } as const;
  return {
    kind: 'table',
    caption: imported === true ? 'Stated when the file was taken in' : 'Set before the run',
    columns: [column('', 3), column('', 7)],
    rows: [
      ['Run', imported === true ? `${runId} (imported)` : runId],
      ['Began', startedAtIso === '' ? 'not stated in the file' : localTimeWords(startedAtIso)],
      [
        'Lasted',
        byVolume?.basis === 'table'
          ? 'no times in the table'
          : `${clockWords(endS)}${underWay === true ? ', under way when this was made' : ''}`,
      ],
      [
        'Charge',
        `${measuredWords({ value: charge.volumeMl, standardUncertainty: chargeDoubtMl(charge) }, 'mL')} of ${measuredWords({ value: charge.strengthAbv, standardUncertainty: charge.standardUncertaintyAbv }, '% vol')}${assumedWords(charge.assumed)}`,
      ],
      ...(ferment === undefined
        ? []
        : [
            [
              'From the ferment',
              `“${ferment.name}”, begun ${localDayWords(ferment.beganAtIso, startedAtIso)}: ${ferment.strengthAbv.value.toFixed(1)} % vol (${ferment.strengthAbv.low.toFixed(1)} to ${ferment.strengthAbv.high.toFixed(1)}) by its log${ferment.wentIn === '' ? '' : `; in it ${ferment.wentIn}`}`,
            ],
          ]),
      [
        'Air pressure',
        `${measuredWords({ value: pressure.pressureKPa, standardUncertainty: pressure.standardUncertaintyKPa }, 'kPa')}${sources[pressure.source]}`,
      ],
      ...(pressure.source === 'steam' && pressure.steam !== undefined
        ? [
            [
              'Head probe in steam',
              `${measuredWords({ value: pressure.steam.shownC, standardUncertainty: pressure.steam.standardUncertaintyK }, '°C')} shown; probe and air pressure together leave u = ${settingNumber(scaleDoubts(settings).temperatureUncertaintyK)} K in doubt`,
            ],
          ]
        : []),
      [
        'Head probe',
        `u = ${settingNumber(probe.standardUncertaintyK)} K, t90 = ${settingNumber(probe.lagT90S)} s, T = ${settingNumber(probe.offsetK)} K + ${settingNumber(probe.gain)} × reading${assumedWords(probe.assumed?.map(() => 'its kind'))}`,
      ],
      ['Rig', rig.description === '' ? 'not described' : rig.description],
      ['Kind', kindWords({ rig })],
      ...(settings.trials === undefined
        ? []
        : [
            [
              'Tried before heat',
              settings.trials.map((trial) => `${trialWords(trial)} (${trial.role})`).join('; '),
            ],
          ]),
      ['Least strength wanted', `${settingNumber(settings.leastStrengthAbv)} % vol`],
    ],
  };
}
