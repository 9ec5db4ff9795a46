import { describe, expect, test } from 'vitest';
import { probeLost } from '../../../../shared-core/monitor/call/probe-lost.ts';
import { factsOf } from '../words/facts.ts';
import { callSecond, standing } from './call-second.ts';

const { condition, occurrence, reason, sentence, speaks } = probeLost;
const again = { count: 3, sinceS: 1500 };
const calls = (facts: ReturnType<typeof factsOf>, track = {}) =>
  condition(callSecond(facts, { track }));

describe('a probe that sends nothing', () => {
  test('is lost, unplugged or silent, but neither frozen nor doubted', () => {
    const faults = ['lost', 'silent', 'open-circuit', 'frozen', 'hotter-than-pot'] as const;
    expect(faults.map((fault) => calls(factsOf({ fault })))).toEqual([
      true,
      true,
      true,
      false,
      false,
    ]);
    expect(calls(factsOf({ doubt: 'below-boiling' }))).toBe(false);
    expect(calls(factsOf({ fault: 'lost', stage: 'cool-down' }))).toBe(false);
  });

  test('is not looked for at plug and cable where the reader of the probe stopped', () => {
    const facts = factsOf({ fault: 'reader-stopped', dropouts: { count: 1, sinceS: 1700 } });
    expect([calls(facts), sentence(facts), reason(facts).act]).toEqual([
      true,
      'The head cannot be read: the part of the program that reads the probe stopped and is being started again.',
      'Read the glass thermometer by eye; heat off and cold before you touch or open the head. The program starts reading again by itself; if it does not, close it and start it again, and go on with this run.',
    ]);
  });

  test('that has dropped out repeatedly stands until it is answered or quiet', () => {
    expect(calls(factsOf({ dropouts: again }), standing)).toBe(true);
    expect(calls(factsOf({ dropouts: again }))).toBe(false);
    expect(calls(factsOf({ dropouts: again }), { ...standing, acknowledgedS: 1700 })).toBe(false);
    expect(calls(factsOf({ dropouts: { count: 1, sinceS: 1700 } }), standing)).toBe(false);
  });

  test('calls who has answered for its dropouts only after twenty seconds of the next', () => {
    const outFor = (seconds: number) =>
      calls(factsOf({ fault: 'silent', dropouts: again, faultSinceS: 1800 - seconds }), {
        raisedS: 1500,
        acknowledgedS: 1510,
        clearedS: 1520,
      });
    expect([outFor(19), outFor(20)]).toEqual([false, true]);
  });

  test('tells how often, and is one alarm for all of them', () => {
    const { because, wouldChangeIf } = reason(factsOf({ fault: 'silent', dropouts: again }));
    expect(because).toBe(
      'At 0:30:00: the probe sends nothing; last trusted value 78.2 °C. The probe has dropped out 3 times in 5 min.',
    );
    expect(wouldChangeIf).toBe('5 min without a dropout; once you have answered, good readings.');
    expect(occurrence(factsOf({ fault: 'silent', dropouts: again }))?.isRepeat).toBe(true);
    const first = factsOf({ fault: 'silent', dropouts: { count: 1, sinceS: 1800 } });
    expect(occurrence(first)?.isRepeat).toBe(false);
    expect(occurrence(factsOf({ dropouts: { count: 1, sinceS: 1500 } }))).toBeNull();
  });

  test('that has dropped out repeatedly and is read meanwhile asks for a look at plug and cable, and for nobody’s eye', () => {
    const reads = factsOf({ dropouts: again });
    expect(occurrence(reads)).toEqual({ key: 'reads again', isRepeat: true });
    expect(reason(reads)).toEqual({
      because: 'At 0:30:00: readings come in again. The probe has dropped out 3 times in 5 min.',
      wouldChangeIf: '5 min without a dropout; once you have answered, good readings.',
      act: 'Check the plug at the computer and the cable up to the still.',
    });
  });

  test('has the sentence only while it is out, and sends nobody’s hands to a hot head', () => {
    expect(sentence(factsOf({ fault: 'lost' }))).toBe(
      'The head cannot be read: the probe is disconnected.',
    );
    expect([factsOf({ fault: 'lost' }), factsOf({ dropouts: again })].map(speaks)).toEqual([
      true,
      false,
    ]);
    expect(probeLost.act).toMatch(/by eye.*heat off and cold before you touch/);
  });
});
