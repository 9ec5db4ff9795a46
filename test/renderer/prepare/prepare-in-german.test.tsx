// @vitest-environment happy-dom
import { cleanup, screen } from '@testing-library/react';
import { afterAll, afterEach, expect, test, vi } from 'vitest';

// Before anything else is loaded, as the window does it: names are said once, so this window's modules are nobody else's.
vi.resetModules();
const { setLanguage, worded } = await import('#shared-core');
setLanguage('de');
const { PreparePlace } = await import('../../../renderer/prepare/prepare-place.tsx');
const { ProbeHeard } = await import('../../../renderer/prepare/probe-heard.tsx');
const { PressureSection } = await import('../../../renderer/prepare/pressure-section.tsx');
const { ToBeRecorded } = await import('../../../renderer/prepare/to-be-recorded.tsx');
const { stillToDo } = await import('../../../renderer/prepare/still-to-do.ts');
const { firstDraft } = await import('../../../renderer/stores/prepare-draft.ts');
const { heardProbe } = await import('../support/heard-probe.ts');
const { renderInWindow } = await import('../support/render-in-window.tsx');

afterEach(cleanup);
afterAll(() => vi.resetModules());

test('what nobody can guess is asked for in German as well, and what cannot be used is named', () => {
  const message = 'Nötig.';
  const problems = [
    { field: 'altitudeM', message },
    { field: 'plates', message },
  ] as const;
  expect(stillToDo(problems, null, firstDraft).map(({ words }) => words)).toEqual([
    'Eine Sonde verbinden, die zu hören ist',
    'Angeben, wie hoch dieser Raum liegt, unter „Luftdruck“',
    '„Böden der Kolonne“ berichtigen',
    'Die 7 Kontrollen vor dem Erhitzen bestätigen',
  ]);
});

test('Prepare is German from its heading to its cautions', () => {
  renderInWindow(<PreparePlace />);
  const text = document.body.textContent?.replaceAll('\u00a0', ' ') ?? '';
  expect(text).toContain('Den Versuch vorbereiten');
  expect(text).toContain('Frische Siedesteine liegen im kalten Kolben');
  expect(text).toContain('Das Kühlwasser läuft: unten hinein, oben hinaus');
  // The small words that every English sentence has.
  expect(text.match(/\b(the|and|with|your|before|from)\b/g)).toBeNull();
});

test('what is to be done about a probe that sends nothing is German too, though the services say it', () => {
  const advice = worded(
    'The port is open but nothing arrives: is the probe switched on, and is this the right port?',
  );
  renderInWindow(<ProbeHeard probe={{ ...heardProbe, state: 'silent', advice }} canAct />);
  expect(screen.getByRole('status').textContent).toMatch(
    /^Der Anschluss ist offen, aber nichts kommt an/,
  );
});

test('steam is German from its how to its finding', () => {
  for (const steamReading of ['', '21,4', '99,42']) {
    renderInWindow(<PressureSection />, undefined, ({ prepare }) =>
      prepare.getState().replace({ ...firstDraft, pressureFrom: 'steam', steamReading }),
    );
    const text = document.body.textContent ?? '';
    expect(text).toContain('Dampf siedenden Wassers, mit dieser Sonde');
    expect(text.match(/\b(the|and|with|your|before|from)\b/g)).toBeNull();
    cleanup();
  }
});

test('the role and the channels keep their capitals', () => {
  renderInWindow(<ToBeRecorded />, undefined, ({ prepare }) =>
    prepare.getState().replace({ ...firstDraft, altitudeM: '540', role: 'technician' }),
  );
  expect(document.body.textContent).toContain(
    '0 von 7, jede mit ihrer Zeit und „Technische Fachkraft“',
  );
});
