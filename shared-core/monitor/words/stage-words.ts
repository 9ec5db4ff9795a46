import type { Stage } from '../../stages/index.ts';
import { worded } from '../../wording/index.ts';
import { even } from '../certainty.ts';
import type { MonitorFacts } from '../monitor-facts.ts';
import { isBlind, probeFaultWords } from '../sense/probe-fault.ts';
import { bathedK } from '../situation/vapour-arrival.ts';
import type { HeadState } from '../situation/vapour-filter.ts';
import { firstFractionWords, unitWords } from './first-fraction-words.ts';
import { ofStrength } from './head-strength.ts';
import { celsius, kelvin, moving, percent, span } from './numbers.ts';

/** The limit watched for, with where this probe shows it: `80 % vol (82.3 °C on this probe)`. */
export function limitWords({ limitAbv, outlook }: MonitorFacts): string {
  return worded('{limit} % vol ({limitOnProbe} on this probe)', {
    limit: limitAbv,
    limitOnProbe: celsius(outlook.limitOnProbeC),
  });
}

/** The evidence for the present stage, in words with numbers. */
export function stageBecause(facts: MonitorFacts): string {
  const { head, situation, stage } = facts;
  if (facts.fault !== null && isBlind(facts.fault)) {
    return worded('Staging waits: {probeFault}. The last sure stage is kept.', {
      probeFault: probeFaultWords[facts.fault],
    });
  }
  if (head === null) return worded('No reading of the head has come yet.');
  if (situation.recededSinceS !== null && stage !== 'cool-down') {
    return worded('The head fell to {bulb}{held}: vapour has receded from the bulb for {time}.', {
      bulb: celsius(head.bulbC),
      held: heldWords(facts, head),
      time: span(facts.timeS - situation.recededSinceS),
    });
  }
  return evidenceOf[stage](facts, head);
}

/** What shows that a stage is the present one, while the head can be read and vapour is there. */
const evidenceOf: Readonly<Record<Stage, (facts: MonitorFacts, head: HeadState) => string>> = {
  'warm-up': (facts, head) => {
    const values = {
      bulb: celsius(head.bulbC),
      against: against(head.bulbC, facts.scale.azeotropeC),
      azeotrope: azeotropeWords(facts),
    };
    return facts.situation.arrivedS === null
      ? worded('The bulb is at {bulb}, {against} {azeotrope}; no vapour bathes it yet.', values)
      : worded(
          'Vapour has reached the bulb, which is at {bulb}, {against} {azeotrope}, and still warms up.',
          values,
        );
  },
  'first-fraction': (facts, head) =>
    worded('Vapour bathes the bulb at {bulb} ({azeotrope}); {soFar}', {
      bulb: celsius(head.bulbC),
      azeotrope: azeotropeWords(facts),
      soFar: firstFractionSoFar(facts),
    }),
  'main-fraction': (facts, head) =>
    worded(
      'The head is at {at}, {against} the limit of {limit}, and {moving}: vapour {ofStrength}.',
      {
        at: standingAt(head),
        against: against(head.vapourC, facts.outlook.limitOnProbeC),
        limit: limitWords(facts),
        moving: moving(head, facts.situation),
        ofStrength: ofStrength(facts),
      },
    ),
  tail: (facts, head) => {
    const limit = limitWords(facts);
    const at = standingAt(head);
    const { passed } = facts.outlook;
    return passed < even
      ? worded(
          'The head has passed the limit of {limit} before, and has not been below it for long. It is at {at} now: vapour {ofStrength}.',
          { limit, at, ofStrength: ofStrength(facts) },
        )
      : worded(
          'The head is at {at}; the vapour is weaker than the limit of {limit} with a probability of {passed}: vapour {ofStrength}.',
          { at, limit, passed: percent(passed), ofStrength: ofStrength(facts) },
        );
  },
  'cool-down': (facts, head) =>
    worded(
      'No vapour has reached the bulb for {absent}{heatOff}; it is at {bulb}, {against} {azeotrope}.',
      {
        absent: span(facts.situation.absentS),
        heatOff: facts.heat === 'off' ? worded(' after the heat was taken off') : '',
        bulb: celsius(head.bulbC),
        against: against(head.bulbC, facts.scale.azeotropeC),
        azeotrope: azeotropeWords(facts),
      },
    ),
};

function azeotropeWords({ scale }: MonitorFacts): string {
  return worded('the azeotrope at {pressure} kPa, {azeotrope}', {
    pressure: scale.pressureKPa.toFixed(1),
    azeotrope: celsius(scale.azeotropeC),
  });
}

/** Less than this between bulb and vapour is not worth a word [K]. */
const tellableLagK = 0.15;

/** Where the head stands; with the vapour's own temperature where the bulb lags behind it, since calls go by that. */
export function standingAt(head: HeadState | null): string {
  if (head === null) return worded('unknown');
  const { bulbC, vapourC, wet } = head;
  return wet < even || Math.abs(vapourC - bulbC) < tellableLagK
    ? celsius(bulbC)
    : worded("{bulb}, with the bulb's lag counted {vapour}", {
        bulb: celsius(bulbC),
        vapour: celsius(vapourC),
      });
}

/** Where a temperature stands against another: `1.2 K below`. */
export function against(temperatureC: number, otherC: number): string {
  const difference = kelvin(temperatureC - otherC);
  return temperatureC < otherC
    ? worded('{difference} below', { difference })
    : worded('{difference} above', { difference });
}

/** The held level is told only where the head has really fallen below it: in the tail it stood far above. */
function heldWords({ situation: { levelC } }: MonitorFacts, { bulbC }: HeadState): string {
  if (levelC === null || bulbC > levelC - 0.1) return '';
  return worded(', below the {level} of its plateau', { level: celsius(levelC) });
}

function firstFractionSoFar({ firstFraction, situation }: MonitorFacts): string {
  if (situation.heldS === null) return worded('it has not come to rest yet.');
  const source = firstFraction.estimated ? worded(' (estimated, nothing booked)') : '';
  return worded(
    '{firstFraction} of the first fraction so far{source}. Its end is your convention: light volatiles are too little to be seen by temperature.',
    { firstFraction: firstFractionWords(firstFraction), source },
  );
}

/** What would change the call, so that it can follow `This would change if`. */
export function stageWouldChangeIf(facts: MonitorFacts): string {
  const { scale, outlook, situation, firstFraction } = facts;
  if (isBlind(facts.fault)) {
    return worded('Good readings came in again: staging then goes on where it was.');
  }
  if (situation.recededSinceS !== null && facts.stage !== 'cool-down') {
    return worded(
      'The head came back near {level} or higher: the stage then goes on. After some minutes below, it becomes the cool-down.',
      { level: celsius(Math.min(situation.levelC ?? scale.azeotropeC, outlook.limitOnProbeC)) },
    );
  }
  switch (facts.stage) {
    case 'warm-up':
      return worded('The bulb passed {azeotrope} in vapour: then the first fraction begins.', {
        azeotrope: celsius(scale.azeotropeC - bathedK),
      });
    case 'first-fraction':
      return worded(
        'The head held and {wanted} {unit} had been set apart: then the main fraction begins. If the head holds above {limitOnProbe}, there is no main fraction.',
        {
          wanted: firstFraction.wanted,
          unit: unitWords(firstFraction.unit),
          limitOnProbe: celsius(outlook.limitOnProbeC),
        },
      );
    case 'main-fraction':
      return worded('The head passed {limitOnProbe}: then the tail begins.', {
        limitOnProbe: celsius(outlook.limitOnProbeC),
      });
    case 'tail':
      return worded(
        'The head held below {limitOnProbe} for some minutes: then it is the main fraction again. No vapour for some minutes: then the cool-down begins.',
        { limitOnProbe: celsius(outlook.limitOnProbeC) },
      );
    case 'cool-down':
      return worded('Vapour came back to the bulb: the stage before then goes on.');
  }
}
