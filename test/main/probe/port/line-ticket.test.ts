import { mkdtempSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { expect, test } from 'vitest';
import { openPseudoTerminal } from '#main';
import { lineTicket } from '../../../../main/probe/port/line-ticket.ts';

test('a pseudo-terminal has one ticket by its number, and a new one for each new link to it', async () => {
  const terminal = openPseudoTerminal();
  if (!terminal.ok) throw new Error(terminal.error);
  const folder = mkdtempSync(path.join(tmpdir(), 'ticket-'));
  const link = path.join(folder, 'port');
  try {
    symlinkSync(terminal.value.path, link);
    const first = lineTicket(link);
    expect(lineTicket(link)).toBe(first);
    rmSync(link);
    await new Promise((resolve) => setTimeout(resolve, 20));
    symlinkSync(terminal.value.path, link);
    expect(lineTicket(link)).not.toBe(first);
    expect(lineTicket(terminal.value.path)).toBe(terminal.value.path);
  } finally {
    rmSync(folder, { recursive: true });
    terminal.value.close();
  }
});

test('a port that keeps its name, and one that is not there, have none', () => {
  expect([lineTicket('/dev/null'), lineTicket('/dev/does-not-exist')]).toEqual([null, null]);
});
