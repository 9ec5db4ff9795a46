import { expect, test } from 'vitest';
import { defaultRunSettings } from '../../../shared-core/run/default-run-settings.ts';
import { readSettingsFile, writeSettingsFile } from '../../../shared-core/run/settings-file.ts';

const file = { settings: defaultRunSettings, startedAtIso: '2026-03-18T09:15:00.000Z' };

test('settings that were written are read as they were, with the start of the run', () => {
  const read = readSettingsFile(writeSettingsFile(file));
  expect(read).toMatchObject({ ok: true, value: file });
});

test('the file is text with lines of its own, ended as a text file is, and says what it is', () => {
  const text = writeSettingsFile(file);
  expect(text).toMatch(/^\{\n {2}"format": "still-head-run-settings",\n {2}"version": 1,\n/);
  expect(text).toMatch(/[^\n]\n$/);
});

test('another file, another version and a torn one are refused with what to choose', () => {
  const text = writeSettingsFile(file);
  const refused = [
    '',
    text.slice(0, 80),
    text.replace('still-head-run-settings', 'settings'),
    text.replace('"version": 1', '"version": 2'),
    text.replace('"volumeMl": 350', '"volumeMl": -1'),
  ];
  for (const other of refused) {
    expect(readSettingsFile(other)).toEqual({
      ok: false,
      error: 'This is no settings file of a pack: choose the one in its folder "settings".',
    });
  }
});
