import { describe, expect, test } from 'vitest';
import { draftOf, mappingOf } from '../../../renderer/take-in/import-draft.ts';
import { explainCsvProblem, type ReadCsv, readReadingsCsv } from '../../../shared-core/index.ts';

function read(csv: string, mapping?: Parameters<typeof readReadingsCsv>[1]): ReadCsv {
  const answer = readReadingsCsv(csv, mapping);
  if (!answer.ok) throw new Error(explainCsvProblem(answer.error));
  return answer.value;
}

/** What the window takes in where the person changes nothing that was found. */
function readInWindow(csv: string): ReadCsv {
  const draft = mappingOf(draftOf(csv, 'utf-8'));
  if (draft.kind !== 'mapping') throw new Error(draft.sentence);
  return read(csv, draft.mapping);
}

const heads = ({ inputs }: ReadCsv) =>
  inputs.flatMap((input) =>
    input.kind === 'reading' && input.channel === 'head' ? [[input.timeS, input.value]] : [],
  );

const table = (...rows: readonly string[]) => `${rows.join('\n')}\n`;
const four = [
  [0, 21.5],
  [10, 21.6],
  [20, 21.7],
  [30, 21.8],
];
/** Five rows, ten seconds apart, in a column of times as `time` writes them. */
const rows = (row: (at: number, value: string) => string) =>
  [0, 1, 2, 3].map((at) => row(at, (21.5 + at / 10).toFixed(1)));
const two = (value: number) => String(value).padStart(2, '0');

describe('a table of whatever logger is read as it was meant, by itself and in the window alike', () => {
  test.each<[string, string]>([
    [
      'a date and time in one title',
      table(
        '"Date/Time","Ch1 [°C]"',
        ...rows((at, value) => `29.11.2026 10:00:${two(10 * at)},${value}`),
      ),
    ],
    [
      'a title nobody foresaw over dates',
      table(
        'Gemessen am;Wert',
        ...rows((at, value) => `2026-11-29 10:00:${two(10 * at)};${value}`),
      ),
    ],
    ['titles that are units', table('s,°C', ...rows((at, value) => `${10 * at},${value}`))],
    [
      'its newest row on top',
      table('time_s,head_C', ...rows((at, value) => `${10 * at},${value}`).reverse()),
    ],
    [
      'the days of a spreadsheet',
      table('Time,Temp C', ...rows((at, value) => `${(46_355.4 + at / 8640).toFixed(8)},${value}`)),
    ],
    [
      'grouped milliseconds beside a decimal comma',
      table(
        'Zeit [ms];Temperatur [°C]',
        ...rows((at, value) => `${at === 0 ? '0' : `${10 * at}.000`};${value.replace('.', ',')}`),
      ),
    ],
    [
      'columns set apart by spaces',
      table('time   head', ...rows((at, value) => `${String(10 * at).padStart(4)}   ${value}  `)),
    ],
    [
      'milliseconds after a colon',
      table('Time,Temp', ...rows((at, value) => `10:00:${two(10 * at)}:000,${value}`)),
    ],
    [
      'milliseconds since 1970 under a title of its own',
      table('ts,temp', ...rows((at, value) => `${1_796_000_000_000 + 10_000 * at},${value}`)),
    ],
    [
      'units in its cells',
      table('Zeit;Kopf', ...rows((at, value) => `${10 * at} s;${value.replace('.', ',')} °C`)),
    ],
    [
      'a month by its name',
      table('Time,Head', ...rows((at, value) => `29-Nov-2026 10:00:${two(10 * at)},${value}`)),
    ],
    [
      'a month by its German name',
      table('Zeit;Kopf', ...rows((at, value) => `3. März 2026 10:00:${two(10 * at)};${value}`)),
    ],
    [
      'a row’s number and a column of units',
      table(
        '#;Uhrzeit;Messwert;Einheit',
        ...rows((at, value) => `${at};10:00:${two(10 * at)};${value};°C`),
        '4;10:00:40;21.9;°C',
      ),
    ],
    [
      'degrees Fahrenheit without their sign',
      table(
        'Time,Head F',
        ...rows((at, value) => `10:00:${two(10 * at)},${(Number(value) * 1.8 + 32).toFixed(2)}`),
      ),
    ],
  ])('%s', (_, csv) => {
    const found = heads(read(csv)).slice(0, 4);
    expect(found.map(([timeS]) => timeS)).toEqual(four.map(([timeS]) => timeS));
    for (const [at, [, value]] of found.entries()) expect(value).toBeCloseTo(four[at]?.[1] ?? 0, 6);
    expect(readInWindow(csv).inputs).toEqual(read(csv).inputs);
    expect(read(csv).rejectedRows).toEqual([]);
  });

  test.each<[string, string, readonly number[]]>([
    [
      'minutes and seconds in two columns',
      table('min,sec,T', '0,30,20', '0,50,20', '1,10,20', '1,30,20', '2,0,20'),
      [30, 50, 70, 90, 120],
    ],
    [
      'hours, minutes and seconds in three',
      table('h;min;s;T', '0;59;40;20', '0;59;50;20', '1;0;0;20', '1;0;10;20'),
      [3580, 3590, 3600, 3610],
    ],
    [
      'minutes and seconds of a table that is read once a minute',
      table('min;sec;T', '0;30;20', '1;30;20', '2;30;20', '3;30;20'),
      [30, 90, 150, 210],
    ],
    [
      'whole hours beside the lowest and highest temperature of each',
      table('Time (h),min,max,Head', '0,20.5,22.5,21', '1,21.5,23.5,22', '2,20.1,23,21'),
      [0, 3600, 7200],
    ],
    [
      'minutes and seconds, the newest on top',
      table('Time,Head', '10:20,20', '10:10,20', '10:00,20', '09:50,20', '00:10,20', '00:00,20'),
      [0, 10, 590, 600, 610, 620],
    ],
    [
      'the same time in two units',
      table('Time (min),Time (s),Head', '0,0,20', '0.5,30,20', '1,60,20', '1.5,90,20'),
      [0, 30, 60, 90],
    ],
  ])('%s', (_, csv, times) => {
    expect(heads(read(csv)).map(([timeS]) => timeS)).toEqual(times);
    expect(heads(readInWindow(csv)).map(([timeS]) => timeS)).toEqual(times);
  });

  test('a spreadsheet’s days tell when the table began', () => {
    const csv = table('Time,Head', '46355.5,20', '46355.50011574,20');
    // 46 355 is 2026-11-29; source: day 25 569 is 1970-01-01 (date systems of ISO/IEC 29500-1).
    const noonS = Date.UTC(2026, 10, 29, 12) / 1000;
    expect(read(csv).began).toEqual({ calendarS: noonS, isLocal: true });
  });
});

describe('times that begin anew within a table', () => {
  const minutes = (from: number, count: number) =>
    Array.from({ length: count }, (_, at) => `${from + 60 * at},20`);

  test('are put behind what stands above, and that is said: a logger was started again', () => {
    const { inputs, rejectedRows, remarks } = read(
      table('time_s,head_degC', ...minutes(0, 5), ...minutes(0, 6)),
    );
    // Two rows are needed to see it; the third counts again.
    expect(inputs.map(({ timeS }) => timeS)).toEqual([0, 60, 120, 180, 240, 360, 420, 480, 540]);
    expect(rejectedRows.map(({ line }) => line)).toEqual([7, 8]);
    expect(remarks).toEqual([expect.stringContaining('begin anew within the table (once)')]);
  });

  test('a clock put back an hour goes on', () => {
    const clock = ['02:58', '02:59', '02:00', '02:01', '02:02', '02:03'];
    const csv = table('Time (h:mm),Head', ...clock.map((at) => `${at},20`));
    expect(heads(read(csv)).map(([timeS]) => timeS)).toEqual([0, 60, 180, 240]);
  });

  test('single times that lie behind are slips and move nothing', () => {
    const csv = table(
      'time_s,head_degC',
      ...['0,1', '60,1', '5,1', '120,1', '7,1', '9,1', '180,1'],
    );
    expect(heads(read(csv)).map(([timeS]) => timeS)).toEqual([0, 60, 120, 180]);
    expect(read(csv).remarks).toEqual([]);
  });

  test('rows in no order at all are refused one by one, and no time is made up without end', () => {
    const times = Array.from({ length: 4000 }, (_, at) => (at * 7919) % 4001);
    const { rejectedRows, endS } = read(
      table('time_s,head_degC', ...times.map((timeS) => `${timeS},20`)),
    );
    expect(rejectedRows.length).toBeGreaterThan(3500);
    expect(endS).toBeLessThan(100_000);
  });
});
