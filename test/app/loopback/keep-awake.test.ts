import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import { expect, onTestFinished, test } from 'vitest';
import { awakeCommand, keepAwake } from '../../../app/loopback/keep-awake.ts';

type Listener = (body: { readonly state: string }) => void;

function services() {
  let listener: Listener = () => {};
  return {
    on: (_name: string, given: Listener) => {
      listener = given;
      return () => {
        listener = () => {};
      };
    },
    become: (state: string) => listener({ state }),
  };
}

/** A program that notes when it begins and when its standard input is closed. */
function notingProgram() {
  const folder = mkdtempSync(path.join(tmpdir(), 'awake-'));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  const notes = path.join(folder, 'notes');
  writeFileSync(notes, '');
  const script = `const { appendFileSync: a } = require('node:fs');
    a(${JSON.stringify(notes)}, 'awake ');
    process.stdin.resume().on('end', () => a(${JSON.stringify(notes)}, 'let go '));`;
  return {
    notes: () => readFileSync(notes, 'utf8').trim(),
    program: { command: process.execPath, commandArguments: ['-e', script] },
  };
}

test('one keeper stands by while there is a run, also a failing one, and goes with it', async () => {
  const told = services();
  const { notes, program } = notingProgram();
  const stop = keepAwake(told as never, program);
  told.become('idle');
  for (const state of ['recording', 'recording', 'failed']) told.become(state);
  await expect.poll(notes).toBe('awake');
  told.become('idle');
  await expect.poll(notes).toBe('awake let go');
  told.become('recording');
  await expect.poll(notes).toBe('awake let go awake');
  stop();
  await expect.poll(notes).toBe('awake let go awake let go');
});

test('a computer without such a program is only not kept awake', () => {
  const told = services();
  const stop = keepAwake(told as never, { command: 'no-such-program', commandArguments: [] });
  told.become('recording');
  stop();
});

test.each(['linux', 'darwin', 'win32'] as const)(
  '%s has a program of its own for it',
  (platform) => {
    const { command, commandArguments } = awakeCommand(platform);
    expect({ command, hasArguments: commandArguments.length > 0 }).toEqual({
      command: expect.stringMatching(/^(systemd-inhibit|caffeinate|powershell\.exe)$/),
      hasArguments: true,
    });
  },
);
