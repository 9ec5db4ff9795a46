import { describe, expect, test } from 'vitest';
import { quietAlarmTrack } from '../../../../shared-core/alarms/index.ts';
import type { StandingAlarm } from '../../../../shared-core/monitor/alarm-bank.ts';
import { alarmCatalogue } from '../../../../shared-core/monitor/call/index.ts';
import type { MonitorFacts } from '../../../../shared-core/monitor/monitor-facts.ts';
import { composeSentence } from '../../../../shared-core/monitor/words/sentence.ts';
import { createSentenceKeeper } from '../../../../shared-core/monitor/words/sentence-keeper.ts';
import type { Alarm } from '../../../../shared-core/snapshot/index.ts';
import { factsOf, headAt } from './facts.ts';

type At = (timeS: number) => MonitorFacts;

/** What is said from one second to the next, each time it becomes something else but for its numbers. */
function said(facts: At, untilS: number, standing: (timeS: number) => StandingAlarm[] = () => []) {
  const keeper = createSentenceKeeper();
  const list: { readonly timeS: number; readonly sentence: string; readonly act: string | null }[] =
    [];
  for (let timeS = 1; timeS <= untilS; timeS += 1) {
    const now = { ...facts(timeS), timeS };
    keeper.second(now, standing(timeS));
    const { sentence, act } = composeSentence(now, keeper.kept());
    const before = list[list.length - 1]?.sentence;
    if (before !== undefined && shapeOf(before) === shapeOf(sentence)) continue;
    list.push({ timeS, sentence, act });
  }
  return list;
}

function shapeOf(sentence: string): string {
  return sentence.replace(/[\d.,–]+/g, '#');
}

function standingAlarm(alarm: Alarm, active: boolean): StandingAlarm {
  const state = active ? 'unacknowledged' : 'returned-unacknowledged';
  return {
    alarm,
    track: { ...quietAlarmTrack, state, active, raisedS: 1 },
    reason: { because: '', wouldChangeIf: '' },
  };
}

/** A head that has left its plateau, by so much, with this far to go by its rate. */
function leaving(aboveK: number, etaS: number | null, end?: { low: number; high: number }) {
  const forecast = end && {
    madeS: 0,
    mainFractionEndS: { ...end, value: (end.low + end.high) / 2 },
    mainFractionEndIfEasedS: null,
    distillateMlAtEnd: { value: 40, low: 38, high: 42 },
    potStrengthAbv: null,
    potVolumeMl: null,
    collectedMl: null,
    wouldHelp: null,
    doubt: null,
  };
  return factsOf(
    { ...(forecast && { forecast }) },
    {
      head: headAt(78.2 + aboveK, 0.01),
      situation: { departedS: aboveK > 0.75 ? 1 : null },
      outlook: { etaS },
    },
  );
}

describe('the sentence at the top', () => {
  test('a head that wavers about the edge of its plateau does not make it waver', () => {
    const wavering: At = (timeS) => leaving(timeS > 100 && timeS % 20 < 10 ? 0.9 : 0.6, null);
    expect(said(wavering, 600).map(({ sentence }) => sentence)).toEqual([
      'The main fraction is coming over at 78.8 °C; its strength has not settled yet.',
      'The main fraction is coming over at 78.8 °C, 84–91 % vol.',
      'The plateau is ending: the head is at 79.1 °C, 0.9 K above where it held.',
    ]);
  });

  test('a head that has fallen back below its level is not said to leave it any longer', () => {
    const course: At = (timeS) => leaving(timeS > 100 && timeS < 130 ? 1 : -0.1, null);
    const shapes = said(course, 200).map(({ timeS, sentence }) => `${timeS}: ${sentence}`);
    expect(shapes.slice(-2)).toEqual([
      expect.stringMatching(/^101: The plateau is ending/),
      expect.stringMatching(/^130: The main fraction is coming over at 78\.1 °C/),
    ]);
  });

  test('from afar the forecast tells when the limit comes, near it the rise, and never both in turn', () => {
    const end = { low: 900, high: 1500 };
    const course: At = (timeS) => {
      const etaS = timeS < 400 ? (timeS % 10 < 5 ? 200 : 500) : timeS % 10 < 5 ? 120 : 200;
      return leaving(1.5, etaS, end);
    };
    const told = said(course, 600).map(({ sentence }) => sentence);
    expect(told.filter((sentence) => sentence.includes('limit'))).toEqual([
      'The plateau is ending: the head is at 79.7 °C, 1.5 K above where it held; the limit comes in about 14 to 25 min.',
      expect.stringMatching(/; the limit comes within \d min\.$/),
    ]);
  });

  test('before the main fraction the forecast tells it all the same: a head that rises there leaves no plateau of its own', () => {
    const by = (stage: MonitorFacts['stage']) => {
      const keeper = createSentenceKeeper();
      keeper.second({ ...leaving(1.5, 60, { low: 900, high: 1500 }), stage, timeS: 1 }, []);
      return keeper.kept().limitAhead?.by;
    };
    expect([by('first-fraction'), by('main-fraction'), by('tail')]).toEqual([
      'forecast',
      'rate',
      undefined,
    ]);
  });

  test('what asks for the heat to be taken off comes at once and before anything else', () => {
    const alarms = (timeS: number) =>
      timeS < 100
        ? []
        : [standingAlarm('probe-lost', true), standingAlarm('plateau-departure', timeS >= 110)];
    const acts = said(() => factsOf({ fault: 'silent' }), 120, alarms).map(({ timeS, act }) => ({
      timeS,
      act,
    }));
    expect(acts.slice(-2)).toEqual([
      { timeS: 100, act: expect.stringContaining(alarmCatalogue['probe-lost'].act) },
      { timeS: 110, act: alarmCatalogue['plateau-departure'].act },
    ]);
  });

  test('an alarm that comes and goes is one alarm, until it has been gone for half a minute', () => {
    const alarms = (timeS: number) => [
      standingAlarm('over-limit', timeS > 100 && timeS < 200 && timeS % 40 < 20),
    ];
    const sentences = said(() => factsOf({ stage: 'tail' }), 400, alarms);
    expect(sentences.map(({ sentence }) => shapeOf(sentence)).slice(1)).toEqual([
      'The tail is coming over at # °C# # % vol#',
      'What comes over is weaker than you asked for#',
      'The tail is coming over at # °C# # % vol#',
    ]);
  });

  test('a heat-off mark is answered at once: nothing goes on asking for what was done', () => {
    const keeper = createSentenceKeeper();
    const hot = factsOf({ timeS: 10 }, { head: headAt(83) });
    keeper.second(hot, [standingAlarm('plateau-departure', true)]);
    const off = { ...hot, heat: 'off' as const };
    keeper.second(off, [standingAlarm('plateau-departure', false)], true);
    expect(composeSentence(off, keeper.kept())).toEqual({
      sentence: 'The heat is off; the head is at 83.0 °C.',
      act: 'Keep the cooling water running until nothing drips.',
    });
  });

  test('vapour that leaves and returns is said as it is, and asks whether the pot boils', () => {
    const course: At = (timeS) =>
      timeS < 100 || timeS > 160
        ? factsOf({}, { situation: { calmS: timeS > 160 ? timeS - 160 : 800 } })
        : factsOf({}, { head: headAt(70), situation: { recededSinceS: 100, calmS: 0 } });
    expect(said(course, 400).slice(2)).toEqual([
      {
        timeS: 100,
        sentence: 'Vapour has left the thermometer: the head has sunk to 70.0 °C.',
        act: 'See whether the pot still boils.',
      },
      {
        timeS: 161,
        sentence: 'Vapour is back at the thermometer: the head is settling at 78.2 °C.',
        act: null,
      },
      {
        timeS: 180,
        sentence: 'The main fraction is coming over at 78.2 °C; its strength has not settled yet.',
        act: null,
      },
      {
        timeS: 219,
        sentence: expect.stringMatching(/at 78\.2 °C, \d\d–\d\d % vol\.$/),
        act: null,
      },
    ]);
  });

  test('a still that cools without a mark is asked about its heat first', () => {
    const cooling: At = () => factsOf({ stage: 'cool-down', heat: 'unknown' });
    expect(said(cooling, 3)).toEqual([
      { timeS: 1, sentence: 'The still is cooling down.', act: 'Make sure that the heat is off.' },
    ]);
  });

  test('a head below what ethanol–water vapour can have is no strong main fraction', () => {
    const cool: At = () => factsOf({}, { head: headAt(74) });
    expect(said(cool, 60)).toEqual([
      {
        timeS: 1,
        sentence:
          'The main fraction is coming over at 74.0 °C, cooler than ethanol–water vapour can be.',
        act: 'See through the glass whether the bulb sits in the vapour at the side arm.',
      },
    ]);
  });
});

describe('composeSentence', () => {
  test('gives the reading shown beside it, however far what is believed of the bulb lies from it', () => {
    const facts = { ...factsOf({}, { head: headAt(78.2, 0) }), timeS: 1 };
    const keeper = createSentenceKeeper();
    keeper.second(facts, []);
    const sentences = [null, 78.34, 80.2].map(
      (shownC) => composeSentence(facts, keeper.kept(), shownC).sentence,
    );
    expect(sentences.map((sentence) => /at (\S+) °C/.exec(sentence)?.[1])).toEqual([
      '78.2',
      '78.3',
      '80.2',
    ]);
  });
});
