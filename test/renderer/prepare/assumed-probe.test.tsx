// @vitest-environment happy-dom
import { cleanup, fireEvent, screen, waitFor } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { draftFromSetUp } from '../../../renderer/prepare/draft-from-set-up.ts';
import { ProbeSection } from '../../../renderer/prepare/probe-section.tsx';
import { setUpFromDraft } from '../../../renderer/prepare/set-up-from-draft.ts';
import { firstDraft } from '../../../renderer/stores/prepare-draft.ts';
import { looksMade, showPrepare } from './support/shown-prepare.tsx';

afterEach(() => {
  cleanup();
  window.location.hash = '';
});

const show = (change: Partial<typeof firstDraft> = {}) =>
  showPrepare(<ProbeSection canAct />, {
    ...firstDraft,
    altitudeM: '0',
    confirms: looksMade,
    ...change,
  });

const step = (name: RegExp) => screen.getByRole('button', { name }).textContent;
const kinds = () =>
  screen.getAllByRole<HTMLInputElement>('radio', { name: /Digital|Platinum|Thermocouple/ });
const recordedKind = () =>
  [...document.querySelectorAll('.to-be-recorded dt')].find(
    ({ textContent }) => textContent === 'Kind of probe',
  )?.nextSibling?.textContent;

test('a kind of probe that nobody chose is told as assumed, and stands chosen nowhere', () => {
  show();
  expect(step(/^1\. Probe/)).toBe('1. Probe ○ heard, its kind assumed');
  expect(document.body.textContent).toContain('○ Digital, in a steel sleeve, assumed');
  expect(kinds().filter(({ checked }) => checked)).toEqual([]);
  expect(recordedKind()).toBe('Digital, in a steel sleeve, assumed: nobody has stated it');
});

test('it is stated once somebody chose it, be it the one that was assumed', () => {
  show();
  fireEvent.click(screen.getByRole('radio', { name: 'Digital, in a steel sleeve' }));
  expect(step(/^1\. Probe/)).toBe('1. Probe ✓ heard');
  expect(kinds().map(({ checked }) => checked)).toEqual([true, false, false, false]);
  expect(document.body.textContent).not.toContain('its kind assumed');
  expect(recordedKind()).toBe('Digital, in a steel sleeve');
});

test('a run on an assumed kind has that in its settings; a kind that was chosen stays so for the next run', async () => {
  const { started, draft } = show();
  fireEvent.click(screen.getByRole('button', { name: 'Start the run' }));
  await waitFor(() => expect(draft()?.confirms).toEqual([]));
  expect(started).toMatchObject([{ settings: { probe: { assumed: ['probe-kind'] } } }]);
  cleanup();
  const chosen = show();
  fireEvent.click(screen.getByRole('radio', { name: 'Platinum, class A' }));
  fireEvent.click(screen.getByRole('button', { name: 'Start the run' }));
  await waitFor(() => expect(chosen.draft()?.confirms).toEqual([]));
  expect(chosen.started).toMatchObject([{ settings: { probe: { lagT90S: 10 } } }]);
  expect(JSON.stringify(chosen.started)).not.toContain('"probe-kind"');
  expect(chosen.draft()?.assumed).toEqual(['volume', 'strength']);
});

test('a kept set-up brings along whether its probe’s kind was chosen', () => {
  const again = (assumed: typeof firstDraft.assumed) => {
    const kept = setUpFromDraft({ ...firstDraft, assumed }, null);
    if (!kept.ok) throw new Error(JSON.stringify(kept.error));
    return draftFromSetUp(kept.value, firstDraft, '.').assumed;
  };
  expect([again([]), again(['volume', 'probe-kind'])]).toEqual([[], ['volume', 'probe-kind']]);
});

test('an air pressure that nobody knows is no step that is done', () => {
  show({ pressureFrom: 'unknown' });
  expect(step(/^3\. Air pressure/)).toBe('3. Air pressure ○ not known');
});
