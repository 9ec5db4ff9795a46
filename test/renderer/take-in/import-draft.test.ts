import { describe, expect, test } from 'vitest';
import { candidateCurves } from '../../../renderer/take-in/candidate-curves.ts';
import { beginningText, readBeginning } from '../../../renderer/take-in/file-beginning.ts';
import { draftOf, mappingOf, withColumn } from '../../../renderer/take-in/import-draft.ts';
import { judgeDraft } from '../../../renderer/take-in/judge-draft.ts';

const own =
  'time_s,head_degC,head_quality,marks\r\n0,20.5,good,\r\n1,,,heat-on\r\n2,20.6,suspect,\r\n';

describe('draftOf', () => {
  test('finds everything in a table of this program, quality and marks included', () => {
    expect(mappingOf(draftOf(own, 'auto'))).toEqual({
      kind: 'mapping',
      mapping: {
        delimiter: ',',
        time: { column: 1, unit: 's', dateOrder: 'day-month' },
        channels: [{ column: 2, channel: 'head', unit: '°C', quality: 3 }],
        marks: 4,
        notes: null,
      },
    });
    const judged = judgeDraft(own, draftOf(own, 'auto'));
    expect(judged.kind === 'readable' && judged.read.inputs.map(({ kind }) => kind)).toEqual([
      'reading',
      'mark',
      'reading',
    ]);
  });

  test('shows titles and samples where it can find out nothing, and says what is to be said', () => {
    const odd = 'Stand 3;\nUhr;Fühler\n10:00:00;68,2\n10:00:10;68,4\n';
    const draft = draftOf(odd, 'auto');
    const cleared = withColumn(withColumn(draft, 0, { holds: 'nothing' }), 1, { holds: 'nothing' });
    expect(cleared.columns.map(({ title, samples }) => [title, samples])).toEqual([
      ['Uhr', ['10:00:00', '10:00:10']],
      ['Fühler', ['68,2', '68,4']],
    ]);
    expect(judgeDraft(odd, cleared)).toEqual({
      kind: 'not-yet',
      sentence: 'Say which column holds the time, or the volume of distillate.',
    });
    const timed = withColumn(cleared, 0, { holds: 'time' });
    expect(judgeDraft(odd, timed)).toEqual({
      kind: 'not-yet',
      sentence: 'Say which column holds the head temperature.',
    });
    const whole = withColumn(timed, 1, { holds: 'head', unit: '°F' });
    const judged = judgeDraft(odd, whole);
    expect(judged.kind === 'readable' && judged.read.endS).toBe(10);
  });

  test('of two thermometers without a place, asks which hung in the head, and keeps the other as a channel', () => {
    const two = 'Zeit;Fühler 1;Fühler 2\n0;60,5;20,5\n10;70,5;20,6\n20;80,5;20,9\n';
    const draft = draftOf(two, 'auto');
    expect(draft.headDoubt).toEqual([1, 2]);
    expect(judgeDraft(two, draft)).toEqual({
      kind: 'not-yet',
      sentence: 'Say which column holds the head temperature: column 2 or column 3.',
    });
    expect(
      candidateCurves(two, draft).map(({ title, points }) => [title, points.at(-1)?.temperatureC]),
    ).toEqual([
      ['Fühler 1', 80.5],
      ['Fühler 2', 20.9],
    ]);
    const chosen = withColumn(draft, 2, { holds: 'head' });
    const judged = judgeDraft(two, chosen);
    expect(
      judged.kind === 'readable' && judged.read.channels.map(({ channel }) => channel),
    ).toEqual(['thermometer-2', 'head']);
    expect(draftOf('time_s,pot (°C),T2 (°C)\n0,60,20\n1,61,20\n', 'auto').headDoubt).toEqual([]);
  });

  test('lets only one column be the time or a channel', () => {
    const draft = withColumn(draftOf(own, 'auto'), 2, { holds: 'head' });
    expect(draft.columns.map(({ holds }) => holds)).toEqual(['time', 'nothing', 'head', 'marks']);
  });
});

describe('readBeginning', () => {
  const file = (bytes: Uint8Array<ArrayBuffer>) => new Blob([bytes]);

  test('reads no more than the beginning, and shows no line that is cut off', async () => {
    const long = new TextEncoder().encode('0,20.5\n'.repeat(40_000));
    const beginning = await readBeginning(file(long));
    if (beginning.kind !== 'read') throw new Error(beginning.sentence);
    expect([beginning.bytes.length, beginning.isWhole]).toEqual([65_536, false]);
    expect(beginningText(beginning, 'auto').endsWith('0,20.5\n')).toBe(true);
  });

  test('refuses what is too large without reading it, and what can’t be read', async () => {
    const huge = {
      size: 1_000_000_000,
      slice: () => {
        throw new Error('was read');
      },
    };
    expect(await readBeginning(huge)).toEqual({
      kind: 'refused',
      sentence:
        'The file has 1000 MB, and at most 64 MB can be taken in. Export a part of it, or every tenth reading.',
    });
    expect(await readBeginning(file(new Uint8Array()))).toEqual({
      kind: 'refused',
      sentence: 'The file is empty.',
    });
    const gone = { size: 5, slice: () => ({ arrayBuffer: () => Promise.reject(new Error()) }) };
    expect((await readBeginning(gone)).kind).toBe('refused');
  });
});
