import { describe, expect, test } from 'vitest';
import {
  type ColumnMapping,
  explainCsvProblem,
  type Reading,
  type RunInput,
  readReadingsCsv,
} from '#shared-core';
import { createFahrenheitSuspicion } from '../../../shared-core/csv/fahrenheit-suspicion.ts';
import { loggerSilenceS } from '../../../shared-core/csv/logger-silence.ts';
import { readReadingsCsvInSteps } from '../../../shared-core/csv/read-readings-csv.ts';
import { goodReading } from '../../support/good-reading.ts';

function read(text: string, mapping?: ColumnMapping) {
  const found = readReadingsCsv(text, mapping);
  if (!found.ok) throw new Error(explainCsvProblem(found.error));
  return found.value;
}
function problem(text: string, mapping?: ColumnMapping): string {
  const found = readReadingsCsv(text, mapping);
  return found.ok ? 'no problem' : explainCsvProblem(found.error);
}
const shown = (inputs: readonly RunInput[]) =>
  inputs.map((input) =>
    input.kind === 'reading' ? `${input.timeS} ${input.channel} ${input.value}` : input.kind,
  );

describe('what is wrong with a file', () => {
  test('is said with what it was looked for among, and what would help', () => {
    expect(problem('')).toBe('The file is empty.');
    expect(problem('a\0b')).toBe('The file is not text. Save it as CSV first.');
    expect(problem('Head;Pot\n20;30\n21;31\n')).toBe(
      'No time column was found among "Head", "Pot". Give one the title "time_s" (seconds), or, in a table by volume, "volume_mL" (all distillate so far).',
    );
    expect(problem('t (s);Pot (°C);\n20;30;\n21;31;\n')).toBe(
      'No head temperature column was found among "t (s)", "Pot (°C)". Give one the title "head_degC" (°C).',
    );
    expect(problem('prose\n')).toContain('No time column was found');
    expect(problem('time_s,head_C\n5,nan\n6,3x\n')).toBe(
      'No row of the file holds a time and a temperature. Line 2: no value in the column "head_C" ("nan").',
    );
    expect(problem('time_s,head_C\n5,\n6,\n')).toBe(
      'No row of the file holds a time and a temperature.',
    );
    const thirteen = Array.from({ length: 13 }, (_, index) => `c${index}`);
    expect(problem(`${thirteen.join(';')}\n${thirteen.map(() => 'x').join(';')}\n`)).not.toContain(
      'c12',
    );
  });

  test('with a mapping is said of the column or the unit that it names', () => {
    const table = 'a;b\n0;20\n1;21\n';
    const channels = [{ column: 'b', channel: 'head' }];
    expect(problem(table, { time: { column: 'c' }, channels })).toBe(
      'There is no column "c" among "a", "b". Name it as the file does, or by its number from 1.',
    );
    expect(
      problem(table, { time: { column: 'a' }, channels: [{ ...channels[0]!, unit: 'furlong' }] }),
    ).toBe(
      '"furlong" is no unit that can be converted. Use °C, °F, K, g, kg, mL, kPa, hPa, Pa or mmHg.',
    );
    expect(problem(table, { channels })).toBe(
      'Say which column holds the time, or the volume of distillate (channel "receiver", mL).',
    );
    expect(problem('a;b\nx;y\n', { delimiter: ';', time: { column: 'a' }, channels })).toBe(
      'No time can be read in the column "a".',
    );
    for (const extra of [
      { marks: 'm' },
      { notes: 9 },
      { time: { column: 'a', finer: ['f'] } },
      { channels: [{ ...channels[0]!, quality: 'q' }] },
    ]) {
      expect(problem(table, { time: { column: 'a' }, channels, ...extra })).toMatch(
        /There is no column "[m9fq]"/,
      );
    }
  });

  test('of a table by volume is said where the volume falls, or never grows', () => {
    expect(problem('Volume (mL);Head\n0;78\n10;78,5\n5;79\n')).toBe(
      'The volume in "Volume (mL)" falls in line 4. A table by volume needs all distillate so far: where the receiver was changed, add what was there before; of what is left in the flask, take what is gone.',
    );
    expect(problem('Volume (mL);Head\n10;78\n10;78,5\n')).toBe(
      'The volume in "Volume (mL)" never grows. A table by volume needs all distillate so far: add the fractions up.',
    );
    expect(read('Volume (mL);Head\n10;78\n').inputs).toHaveLength(2);
    expect(read('Volume (mL);Head\n0;78\nx;78\n10;78,5\n').inputs.length).toBe(5);
    // What stands above the readings is no volume.
    expect(read('900;title\nVolume (mL);Head\n0;78\n10;78,5\n').inputs.length).toBe(4);
  });
});

describe('a table read with a mapping', () => {
  test('has its columns by number or title, with units, quality, marks and notes', () => {
    const text =
      'wann|warm|gut|was|dazu\n0|68|good|heat-on|first\n1|69,8|suspect||first\n2|71.6|bad|nonsense|\n';
    const { inputs, rejectedRows, channels } = read(text, {
      delimiter: '|',
      time: { column: 1, unit: 'min' },
      channels: [{ column: 'warm', channel: 'head', unit: '°F', quality: 3 }],
      marks: 'was',
      notes: 5,
    });
    expect(
      inputs.map((input) =>
        input.kind === 'reading'
          ? [input.timeS, Math.round(input.value), input.quality]
          : input.kind === 'mark' && [input.timeS, input.markId, input.mark.type],
      ),
    ).toEqual([
      [0, 20, 'good'],
      [0, 1, 'note'],
      [0, 2, 'heat-on'],
      [60, 21, 'suspect'],
      [120, 22, 'bad'],
    ]);
    expect(rejectedRows).toEqual([{ line: 4, reason: '"nonsense" is no mark that can be read' }]);
    expect(channels[0]).toMatchObject({ title: 'warm', column: 1, qualityColumn: 2 });
  });

  test('has its title from the row above the readings where a column is named by its number', () => {
    const { channels } = read('Lab 3;;\nt;warm\n0;20\n1;21\n', {
      delimiter: ';',
      time: { column: 1 },
      channels: [{ column: 2, channel: 'head' }],
    });
    expect(channels[0]?.title).toBe('warm');
  });

  test.each([
    ['ms', 1],
    ['s', 1000],
    ['min', 60_000],
    ['h', 3_600_000],
    ['d', 86_400_000],
  ] as const)('counts in %s', (unit, ms) => {
    const { inputs } = read('a;b\n0;20\n2;21\n', {
      delimiter: ';',
      time: { column: 'a', unit },
      channels: [{ column: 'b', channel: 'head' }],
    });
    expect(inputs.at(-1)?.timeS).toBeCloseTo((2 * ms) / 1000, 9);
  });

  test('takes clock times of two parts, months and points for what it says', () => {
    const channels = [{ column: 'b', channel: 'head' }];
    const timesOf = (text: string, mapping: Partial<ColumnMapping>) =>
      read(text, { delimiter: ';', channels, ...mapping }).inputs.map(({ timeS }) => timeS);
    const clock = 'a;b\n10:00;20\n10:30;21\n';
    expect(timesOf(clock, { time: { column: 'a', unit: 'mm:ss' } })).toEqual([0, 30]);
    expect(timesOf(clock, { time: { column: 'a', unit: 'h:mm' } })).toEqual([0, 1800]);
    const dates = 'a;b\n01/02/2026 10:00;20\n02/02/2026 10:00;21\n';
    expect(timesOf(dates, { time: { column: 'a' } })).toEqual([0, 86_400]);
    expect(timesOf(dates, { time: { column: 'a', dateOrder: 'month-day' } })).toEqual([
      0,
      31 * 86_400,
    ]);
    const grouped = 'a;b\n0;1.013\n1;1.014\n';
    const pressure = (decimal: '.' | ',' | undefined) =>
      read(grouped, {
        delimiter: ';',
        decimal,
        time: { column: 'a' },
        channels: [{ column: 'b', channel: 'air-pressure', unit: 'hPa' }],
      }).inputs.map((input) => (input as Reading).value);
    expect(pressure(',')).toEqual([101.3, 101.4]);
    expect(readReadingsCsv(grouped, { delimiter: ';', time: { column: 'a' }, channels }).ok).toBe(
      true,
    );
  });

  test('goes on in finer columns, and reads a table by volume without a time', () => {
    expect(
      read('a;b;c\n1;5;20\n1;50;21\n', {
        delimiter: ';',
        time: { column: 'a', unit: 'min', finer: ['b'] },
        channels: [{ column: 'c', channel: 'head' }],
      }).inputs.map(({ timeS }) => timeS),
    ).toEqual([65, 110]);
    const byVolume = read('warm;ml\n78;0\n78,5;10\n', {
      delimiter: ';',
      channels: [
        { column: 'warm', channel: 'head' },
        { column: 'ml', channel: 'receiver' },
      ],
    });
    expect(shown(byVolume.inputs)).toEqual([
      '0 receiver 0',
      '0 head 78',
      '0 receiver 10',
      '0 head 78.5',
    ]);
    expect(byVolume.remarks[0]).toContain('it is taken by the volume in "ml"');
  });
});

describe('a table as it was found', () => {
  test('may begin with its newest row, which is said', () => {
    const { inputs, remarks } = read('t (s);Head\n30;23\n20;22\n10;21\n0;20\n');
    expect(shown(inputs)).toEqual(['0 head 20', '10 head 21', '20 head 22', '30 head 23']);
    expect(remarks).toEqual(['The table begins with its newest row; it was read from its end.']);
  });

  test('may begin anew in its middle, which is said as often as it was so', () => {
    const part = '0;20\n10;21\n20;22\n30;23\n';
    const remark = (parts: number) => read(`t (s);Head\n${part.repeat(parts)}`).remarks[0];
    expect(remark(1)).toBeUndefined();
    expect(remark(2)).toContain('The times begin anew within the table (once)');
    expect(remark(3)).toContain('(2 times)');
  });

  test('knows when it began by its own dates, and when it ended', () => {
    const { began, endS } = read(
      'Time;Head\n14.03.2026 10:15:00;20\n14.03.2026 10:15:10;21\n14.03.2026 10:15:20;\n',
    );
    expect([began, endS]).toEqual([
      { calendarS: Date.UTC(2026, 2, 14, 10, 15) / 1000, isLocal: true },
      20,
    ]);
  });

  test('is read in steps of two thousand rows', () => {
    const rows = Array.from({ length: 4500 }, (_, row) => `${row},20\n`);
    const kept: RunInput[] = [];
    const steps = readReadingsCsvInSteps(`time_s,head_degC\n${rows.join('')}`, (input) =>
      kept.push(input),
    );
    expect([steps.next().value, kept.length]).toEqual([2000, 1999]);
    expect(steps.next().value).toBe(4000);
    expect(steps.next()).toMatchObject({ done: true, value: { ok: true, value: { endS: 4499 } } });
    expect(kept.length).toBe(4500);
  });

  test('has marks below its end that were made after the run', () => {
    const { inputs, lateMarks } = read(
      'time_s,head_degC,marks\n0,20,\n10,,heat-off\n20,,run-ended\n20,,"liquid-mass liquid=residue massG=310"\n',
    );
    expect(inputs.map(({ kind }) => kind)).toEqual(['reading', 'mark']);
    expect(lateMarks).toMatchObject([
      { markId: 2, timeS: 20, mark: { type: 'liquid-mass', massG: 310 } },
    ]);
  });
});

describe('temperatures without a unit', () => {
  const suspect = (...stretches: readonly (readonly [count: number, value: number])[]) => {
    const suspicion = createFahrenheitSuspicion();
    for (const [count, value] of stretches) {
      for (let index = 0; index < count; index += 1) suspicion.see(value);
    }
    return suspicion.remark() !== null;
  };

  test('look like °F where three of them, and a tenth of all, lie where a head settles in °F', () => {
    expect([suspect([2, 172]), suspect([3, 172])]).toEqual([false, true]);
    expect([suspect([27, 70], [3, 172]), suspect([28, 70], [3, 172])]).toEqual([true, false]);
    expect([150, 215, 149.9, 215.1].map((value) => suspect([10, value]))).toEqual([
      true,
      true,
      false,
      false,
    ]);
  });

  test('do not where more than two in a hundred lie above', () => {
    expect(suspect([98, 172], [2, 400])).toBe(true);
    expect(suspect([97, 172], [3, 400])).toBe(false);
    expect(suspect()).toBe(false);
  });
});

describe('the silence of a logger', () => {
  const heads = (...timesS: readonly number[]): readonly RunInput[] =>
    timesS.map((timeS) => goodReading(timeS, 20));

  test('is three of its usual intervals, from 5 s to 10 min', () => {
    expect(loggerSilenceS(heads(0, 10, 20, 30, 500))).toBe(30);
    expect(loggerSilenceS(heads(0, 1, 2))).toBe(5);
    expect(loggerSilenceS(heads(0, 300, 600))).toBe(600);
    expect(loggerSilenceS(heads(7))).toBe(5);
  });

  test('goes by the head alone, and not by readings of one moment', () => {
    const pot = heads(0, 1, 2, 3).map((input) => ({ ...input, channel: 'pot' }) as RunInput);
    expect(loggerSilenceS([...pot, ...heads(0, 20, 20, 20, 40)])).toBe(60);
  });
});
