import { describe, expect, test } from 'vitest';
import { quietAlarmTrack } from '../../../shared-core/alarms/alarm-track.ts';
import { alarmCatalogue } from '../../../shared-core/monitor/call/alarm-catalogue.ts';
import { headExpandedUncertaintyK } from '../../../shared-core/monitor/head-uncertainty.ts';
import { LazySnapshot } from '../../../shared-core/monitor/lazy-snapshot.ts';
import { type SecondSource, SecondView } from '../../../shared-core/monitor/second-view.ts';
import { forecastInStep } from '../../../shared-core/monitor/words/limit-ahead.ts';
import { scaleFinding } from '../../../shared-core/monitor/words/scale-finding.ts';
import { composeSentence } from '../../../shared-core/monitor/words/sentence.ts';
import {
  stageBecause,
  stageWouldChangeIf,
} from '../../../shared-core/monitor/words/stage-words.ts';
import { vapourView } from '../../../shared-core/monitor/words/vapour-words.ts';
import { factsOf } from './words/facts.ts';

type Facts = SecondSource['facts'];

const kept: SecondSource['kept'] = {
  topic: 'main',
  sinceS: 1200,
  strength: 'known',
  limitAhead: null,
};
const sourceOf = (changes: Partial<SecondSource> = {}): SecondSource => ({
  facts: factsOf(),
  standing: [],
  recentEvents: [],
  kept,
  channelProblems: [],
  ...changes,
});
const viewOf = (changes: Partial<SecondSource> = {}) => new SecondView(sourceOf(changes));
const rateOf = (head: Partial<NonNullable<Facts['head']>>) =>
  viewOf({ facts: factsOf({}, { head }) }).headDoubt.rateKPerMin;

describe('the rate that is shown', () => {
  test('is told beyond its doubt (k = 2), none within it where that is small, and not known where it is large', () => {
    const rate = (rateKPerS: number, rateSdKPerS: number) =>
      rateOf({ wet: 0.9, rateKPerS, rateSdKPerS });
    expect([rate(0.01, 0.004), rate(-0.01, 0.004), rate(0.01, 0.006), rate(0.01, 0.0084)]).toEqual([
      expect.closeTo(0.6, 12),
      expect.closeTo(-0.6, 12),
      0,
      null,
    ]);
  });

  test('is not called none of a head that is held, or said, to leave its plateau', () => {
    const rate = (departedS: number | null, topic: typeof kept.topic, rateKPerS = 0.003) => {
      const head = { wet: 0.9, rateKPerS, rateSdKPerS: 0.004 };
      const facts = factsOf({}, { head, situation: { departedS } });
      return viewOf({ facts, kept: { ...kept, topic } }).headDoubt.rateKPerMin;
    };
    expect([
      rate(null, 'main'),
      rate(1700, 'main'),
      rate(null, 'leaving'),
      rate(1700, 'leaving'),
      rate(1700, 'leaving', 0.01),
    ]).toEqual([0, null, null, null, expect.closeTo(0.6, 12)]);
  });

  test('of a dry bulb is its own, from a kelvin and a half a minute on', () => {
    const rate = (bulbRateKPerS: number, wet = 0.49) =>
      rateOf({ wet, bulbRateKPerS, rateKPerS: 0.02, rateSdKPerS: 0.001 });
    expect([rate(-0.026), rate(0.026), rate(0.024), rate(-0.026, 0.5)]).toEqual([
      expect.closeTo(-1.56, 12),
      expect.closeTo(1.56, 12),
      null,
      expect.closeTo(1.2, 12),
    ]);
  });
});

describe('what all snapshots of a second say', () => {
  test('is what is held true of it, in words made late', () => {
    const facts = factsOf({ condition: 'surging', probability: 0.8 });
    const view = viewOf({ facts });
    expect(view.stage).toEqual({
      stage: 'main-fraction',
      sinceS: 1200,
      probability: 0.8,
      condition: 'surging',
      because: stageBecause(facts),
      wouldChangeIf: stageWouldChangeIf(facts),
    });
    expect(view.plateau).toEqual({
      pressureKPa: facts.scale.pressureKPa,
      pressureStandardUncertaintyKPa: facts.settings.pressure.standardUncertaintyKPa,
      azeotropeC: facts.scale.azeotropeC,
      limitC: facts.scale.limitC,
      leastStrengthAbv: 80,
      ...scaleFinding(facts),
    });
    expect(view.headDoubt.expandedUncertaintyK).toBe(headExpandedUncertaintyK(facts));
    expect(view.vapour).toEqual(vapourView(facts, 'known'));
    expect(view.forecast).toEqual(forecastInStep(facts.forecast, null));
  });

  test('is made once, and stays what it was when more happens later', () => {
    const recentEvents: SecondSource['recentEvents'][number][] = [
      { event: 'vapour-arrived', timeS: 900, because: 'It came.' },
    ];
    const channelProblems: SecondSource['channelProblems'][number][] = [];
    const view = viewOf({ recentEvents, channelProblems });
    const parts = () => [
      view.stage,
      view.plateau,
      view.vapour,
      view.events,
      view.alarms,
      view.headDoubt,
    ];
    const before = parts();
    recentEvents.push({ event: 'plateau-ending', timeS: 1700, because: 'It ends.' });
    for (const [index, part] of parts().entries()) expect(part).toBe(before[index]);
    expect(view.events).toEqual([recentEvents[0]]);
    expect(view.channelProblems).toEqual([]);
    expect(view.channelProblems).toBe(view.channelProblems);
  });

  test('tells of an alarm what the catalogue says of it, and the act of its cause where that has one', () => {
    const standing = (act?: string) => ({
      alarm: 'surging' as const,
      track: {
        ...quietAlarmTrack,
        state: 'unacknowledged' as const,
        active: true,
        raisedS: 1700,
        shelvedUntilS: 1900,
      },
      reason: { because: 'It surges.', wouldChangeIf: 'It calmed down.', ...(act && { act }) },
    });
    const { priority, act, consequence } = alarmCatalogue.surging;
    const told = {
      alarm: 'surging',
      state: 'unacknowledged',
      priority,
      raisedS: 1700,
      act,
      because: 'It surges.',
      consequence,
      wouldChangeIf: 'It calmed down.',
      shelvedUntilS: 1900,
    };
    expect(viewOf({ standing: [standing(), standing('Ease it.')] }).alarms).toEqual([
      told,
      { ...told, act: 'Ease it.' },
    ]);
    const never = { ...standing(), track: quietAlarmTrack };
    expect(viewOf({ standing: [never] }).alarms[0]?.raisedS).toBe(0);
  });

  test.each(['returned-unacknowledged', 'shelved'] as const)(
    'tells no act of an alarm whose condition has gone: %s',
    (state) => {
      const track = { ...quietAlarmTrack, state, active: false, raisedS: 1700, clearedS: 1750 };
      const reason = { because: 'It surged.', wouldChangeIf: '', act: 'Ease it.' };
      const { alarms } = viewOf({ standing: [{ alarm: 'surging', track, reason }] });
      expect(alarms[0]).toMatchObject({ state, act: null, because: 'It surged.' });
    },
  );
});

describe('a snapshot', () => {
  const latest = { timeS: 1799.25, temperatureC: 78.31 };

  test('is its second with the reading and its age, the same as a plain object', () => {
    const source = sourceOf();
    const view = new SecondView(source);
    const snapshot = new LazySnapshot(view, 1800, latest);
    const { sentence, act } = composeSentence(source.facts, kept, 78.31);
    expect(snapshot.toJSON()).toEqual({
      timeS: 1800,
      sentence,
      act,
      stage: view.stage,
      head: { temperatureC: 78.31, ...view.headDoubt, ageS: 0.75 },
      plateau: view.plateau,
      vapour: view.vapour,
      forecast: view.forecast,
      alarms: [],
      events: [],
      heat: 'on',
      channelProblems: [],
    });
    expect(snapshot.head).toBe(snapshot.head);
  });

  test('has no head before the first reading, and no reading is younger than now', () => {
    const view = viewOf();
    expect(new LazySnapshot(view, 1800, null).head).toBeNull();
    expect(new LazySnapshot(view, 1799, latest).head?.ageS).toBe(0);
  });
});

test('the sentence of a second is composed once for each reading that is shown beside it', () => {
  const view = viewOf();
  const { facts } = view.source;
  const first = view.sentenceAt(78.31);
  expect(view.sentenceAt(78.31)).toBe(first);
  expect([first, view.sentenceAt(79.4), view.sentenceAt(null), view.sentenceAt(78.31)]).toEqual(
    [78.31, 79.4, null, 78.31].map((shownC) => composeSentence(facts, kept, shownC)),
  );
});
