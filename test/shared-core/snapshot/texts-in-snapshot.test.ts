import { expect, test } from 'vitest';
import { createMonitor, defaultRunSettings } from '#shared-core';
import type { Snapshot } from '../../../shared-core/snapshot/snapshot.ts';
import { textsInSnapshot } from '../../../shared-core/snapshot/texts-in-snapshot.ts';
import { plainSnapshot } from '../../support/plain-snapshot.ts';

const bare = (): Snapshot => plainSnapshot(createMonitor(defaultRunSettings).snapshot());

test('every text for people is among them, and nothing that is no text for people', () => {
  const first = bare();
  const full: Snapshot = {
    ...first,
    sentence: 'sentence',
    act: 'act',
    stage: { ...first.stage, because: 'stage because', wouldChangeIf: 'stage would change' },
    vapour: {
      kind: 'unsettled',
      alcoholByVolume: null,
      ethanolMassPercent: null,
      explanation: 'explanation',
    },
    forecast: {
      madeS: 1,
      mainFractionEndS: null,
      mainFractionEndIfEasedS: null,
      distillateMlAtEnd: null,
      potStrengthAbv: null,
      potVolumeMl: null,
      collectedMl: null,
      wouldHelp: 'would help',
      doubt: 'doubt',
    },
    alarms: [
      {
        alarm: 'near-dryness',
        state: 'normal',
        priority: 'high',
        raisedS: 1,
        act: 'alarm act',
        because: 'alarm because',
        consequence: 'alarm consequence',
        wouldChangeIf: 'alarm would change',
        shelvedUntilS: null,
      },
    ],
    events: [{ event: 'vapour-arrived', timeS: 1, because: 'event because' }],
    channelProblems: [{ problem: 'channel problem', fromS: 1 }],
  };
  expect(textsInSnapshot(full).toSorted()).toEqual([
    'act',
    'alarm act',
    'alarm because',
    'alarm consequence',
    'alarm would change',
    'channel problem',
    'doubt',
    'event because',
    'explanation',
    'sentence',
    'stage because',
    'stage would change',
    'would help',
  ]);
});

test('what is not there is left out', () => {
  const first = bare();
  const { because, wouldChangeIf } = first.stage;
  expect(textsInSnapshot({ ...first, act: null, vapour: null, forecast: null })).toEqual([
    first.sentence,
    because,
    wouldChangeIf,
  ]);
});
