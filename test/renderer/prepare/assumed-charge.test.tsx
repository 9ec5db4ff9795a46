// @vitest-environment happy-dom
import { cleanup, fireEvent, screen, waitFor } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { assumedOfCharge } from '../../../renderer/draft/assumed-parts.ts';
import { settingsFromDraft } from '../../../renderer/draft/settings-from-draft.ts';
import { ChargeSection } from '../../../renderer/prepare/charge-section.tsx';
import { draftFromSetUp } from '../../../renderer/prepare/draft-from-set-up.ts';
import { ExpectPanel } from '../../../renderer/prepare/expect-panel.tsx';
import { setUpFromDraft } from '../../../renderer/prepare/set-up-from-draft.ts';
import { firstDraft } from '../../../renderer/stores/prepare-draft.ts';
import { statedDraftOf, statedFrom } from '../../../renderer/take-in/stated-draft.ts';
import { looksMade, showPrepare } from './support/shown-prepare.tsx';

afterEach(() => {
  cleanup();
  window.location.hash = '';
});

const ready = {
  ...firstDraft,
  assumed: assumedOfCharge(firstDraft),
  altitudeM: '0',
  confirms: looksMade,
};

const show = () =>
  showPrepare(
    <>
      <ChargeSection />
      <ExpectPanel plan={null} />
    </>,
    ready,
  );

const pot = () => screen.getByRole('button', { name: /^2\. In the pot/ }).textContent;
const assumptions = () => document.body.textContent?.match(/nobody has stated it yet/g)?.length;

test('the charge that stands there at first is told as assumed in its step, beside what hangs on it and at the start', () => {
  show();
  expect(pot()).toBe('2. In the pot ○ 350 mL of 9 % vol, assumed');
  // Beside the entries, on the card of what to expect, and in what will be recorded.
  expect(assumptions()).toBe(2);
  expect(document.body.textContent).toContain('What will be recorded, some of it assumed');
});

test('no line breaks between a number of the assumed charge and its unit', () => {
  show();
  const told = [...document.querySelectorAll('p, button')].flatMap(({ textContent }) =>
    /nobody has stated it yet|^This is in the pot/.test(textContent) ? [textContent] : [],
  );
  expect(told).toHaveLength(3);
  for (const words of told) expect(words).toContain('350\u00a0mL of 9\u00a0%\u00a0vol');
});

test('a charge is stated once each of its numbers was written, or what stands there was confirmed', () => {
  show();
  fireEvent.change(screen.getByLabelText('Volume in the pot'), { target: { value: '400' } });
  expect(document.body.textContent).toContain('a strength of 9\u00a0%\u00a0vol');
  fireEvent.change(screen.getByLabelText('Strength'), { target: { value: '10' } });
  expect([pot(), assumptions()]).toEqual(['2. In the pot ✓ 400 mL of 10 % vol', undefined]);
  cleanup();
  show();
  fireEvent.click(screen.getByRole('button', { name: /^This is in the pot/ }));
  expect([pot(), assumptions()]).toEqual(['2. In the pot ✓ 350 mL of 9 % vol', undefined]);
});

test('a run may start without, and its settings say so with a wide doubt; the charge of one run is none of the next', async () => {
  const { started, draft } = show();
  fireEvent.click(screen.getByRole('button', { name: 'Start the run' }));
  await waitFor(() => expect(draft()?.confirms).toEqual([]));
  expect(started).toMatchObject([
    {
      settings: {
        charge: {
          volumeMl: 350,
          strengthAbv: 9,
          standardUncertaintyMl: 87,
          standardUncertaintyAbv: 1.7,
          assumed: ['volume', 'strength'],
        },
      },
    },
  ]);
  cleanup();
  const stated = show();
  fireEvent.click(screen.getByRole('button', { name: /^This is in the pot/ }));
  fireEvent.click(screen.getByRole('button', { name: 'Start the run' }));
  await waitFor(() => expect(stated.draft()?.confirms).toEqual([]));
  expect(stated.started).toMatchObject([{ settings: { charge: { standardUncertaintyAbv: 0.5 } } }]);
  expect(JSON.stringify(stated.started)).not.toContain('"assumed"');
  expect(stated.draft()?.assumed).toEqual(['volume', 'strength']);
});

test('what steam showed before one run is asked for again before the next', async () => {
  const { draft } = show();
  fireEvent.click(screen.getByRole('button', { name: 'Start the run' }));
  await waitFor(() => expect(draft()?.confirms).toEqual([]));
  expect(draft()).toMatchObject({ steamReading: '', steamTaken: null, stationPressure: '' });
});

test('taken from an earlier lesson a charge is stated, unless it was only assumed then', () => {
  const again = (assumed: typeof firstDraft.assumed) => {
    const kept = setUpFromDraft({ ...ready, assumed }, null);
    if (!kept.ok) throw new Error(JSON.stringify(kept.error));
    return draftFromSetUp(kept.value, firstDraft, '.').assumed;
  };
  expect([again([]), again(['strength'])]).toEqual([[], ['strength']]);
});

test('putting something else right after the run states no charge; a number written for it does, for that number', () => {
  const settings = settingsFromDraft(ready);
  if (!settings.ok) throw new Error(JSON.stringify(settings.error));
  const draft = statedDraftOf(settings.value, '.');
  const charge = (change: Partial<typeof draft>) => {
    const stated = statedFrom({ ...draft, ...change }, settings.value);
    return stated.ok && stated.value.charge;
  };
  expect(charge({ pressureKPa: '99.1' })).toEqual(settings.value.charge);
  expect(charge({ volumeMl: '340' })).toEqual({
    volumeMl: 340,
    strengthAbv: 9,
    standardUncertaintyAbv: 1.7,
    assumed: ['strength'],
  });
});
