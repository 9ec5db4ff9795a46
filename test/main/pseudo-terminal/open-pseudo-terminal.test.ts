import { closeSync, constants, openSync, readSync, writeSync } from 'node:fs';
import { expect, onTestFinished, test } from 'vitest';
import { openPseudoTerminal } from '#main';
import { until } from '../probe/support/until.ts';

function opened() {
  const terminal = openPseudoTerminal();
  if (!terminal.ok) throw new Error(terminal.error);
  onTestFinished(() => terminal.value.close());
  return terminal.value;
}

/** The port as another program opens it; reading never waits. */
function plugInto(path: string) {
  const port = openSync(path, constants.O_RDWR | constants.O_NOCTTY | constants.O_NONBLOCK);
  onTestFinished(() => closeSync(port));
  return {
    write: (text: string) => writeSync(port, Buffer.from(text, 'latin1')),
    read(): string {
      const bytes = Buffer.alloc(65_536);
      try {
        return bytes.toString('latin1', 0, readSync(port, bytes));
      } catch {
        return '';
      }
    },
  };
}

/** Everything that comes over a port, as often as it is taken until nothing is there any more. */
function takingFrom(port: Pick<ReturnType<typeof plugInto>, 'read'>) {
  let taken = '';
  return {
    taken: () => taken,
    takeAll: () =>
      until('all that is there', () => {
        const piece = port.read();
        taken += piece;
        return taken.length > 0 && piece === '';
      }),
  };
}

test('bytes go both ways as they are: nothing is echoed, nothing translated', async () => {
  const terminal = opened();
  const heard: string[] = [];
  terminal.onBytes((bytes) => heard.push(Buffer.from(bytes).toString('latin1')));
  const port = plugInto(terminal.path);
  port.write('*IDN?\r\u0003\u00ff');
  await until('the question', () => heard.join('').length >= 8);
  terminal.write(Buffer.from('78.42\r\n\u0004\u00fe', 'latin1'));
  let answer = '';
  await until('the answer', () => {
    answer += port.read();
    return answer.length >= 9;
  });
  expect([heard.join(''), answer]).toEqual(['*IDN?\r\u0003\u00ff', '78.42\r\n\u0004\u00fe']);
});

test('what nobody takes is lost, without waiting, and once somebody reads no line is torn', async () => {
  const terminal = opened();
  // The system takes a part of a long one where a short one finds no room at all.
  const line = `${'78.42131,'.repeat(333)}\n`;
  for (let count = 0; count < 200; count += 1) terminal.write(Buffer.from(line));
  const { takeAll, taken } = takingFrom(plugInto(terminal.path));
  await takeAll();
  for (let count = 0; count < 20; count += 1) {
    terminal.write(Buffer.from(line));
    await takeAll();
  }
  expect(taken().length).toBeLessThan(line.length * 200);
  // What was begun is ended before the next begins.
  const lines = taken().split('\n').slice(0, -1);
  expect(new Set(lines)).toEqual(new Set([line.trim()]));
});

test('what could not be sent is not sent once the terminal is closed', () => {
  const terminal = opened();
  for (let count = 0; count < 20_000; count += 1) terminal.write(Buffer.from('78.42131\n'));
  terminal.close();
  expect(() => terminal.write(Buffer.from('78.5\n'))).not.toThrow();
});

test('a terminal that was closed is gone for whoever has it open, and takes nothing more', async () => {
  const terminal = opened();
  const port = plugInto(terminal.path);
  terminal.close();
  await until('its end', () => {
    try {
      port.write('x');
      return false;
    } catch {
      return true;
    }
  });
  expect(() => terminal.write(Buffer.from('78.42\n'))).not.toThrow();
  expect(() => terminal.close()).not.toThrow();
});

test('a system without pseudo-terminals, or whose native part fails, is told in one line', () => {
  const asked: unknown[] = [];
  const failing = (error: unknown) => () => {
    asked.push(error);
    throw error;
  };
  const refused = (platform: string, load: () => unknown) => {
    const opening = openPseudoTerminal({ platform, load });
    return opening.ok ? 'opened' : opening.error;
  };
  expect([
    refused('win32', failing('not asked')),
    refused('linux', failing(new Error('Cannot find module\nRequire stack:\n- here'))),
    refused('darwin', failing('no such device')),
  ]).toEqual(['Windows has no pseudo-terminals', 'Cannot find module', 'no such device']);
  expect(asked).toHaveLength(2);
  expect(refused('linux', () => ({}))).not.toBe('opened');
  const sizes: unknown[] = [];
  const odd = {
    open: (...size: readonly unknown[]) => ({ master: sizes.push(size), slave: 'none' }),
  };
  expect(refused('linux', () => odd)).not.toBe('opened');
  expect(sizes).toEqual([[80, 24]]);
});

test('every listener hears all bytes, each of them once', async () => {
  const terminal = opened();
  const heard = ['', ''];
  for (const index of [0, 1]) {
    terminal.onBytes((bytes) => {
      heard[index] += Buffer.from(bytes).toString('latin1');
    });
  }
  const port = plugInto(terminal.path);
  port.write('first');
  await until('the first', () => heard.join('').length >= 10);
  port.write('second');
  await until('the second', () => heard.join('').length >= 22);
  expect(heard).toEqual(['firstsecond', 'firstsecond']);
});

test('a short piece goes at once where the wire is free, and one that found no room goes before the next', async () => {
  const terminal = opened();
  const { takeAll, taken } = takingFrom(plugInto(terminal.path));
  terminal.write(Buffer.from('a\n'));
  await takeAll();
  expect(taken()).toBe('a\n');
  // More than any buffer holds: a part of it stays behind, and the next piece is lost while it does.
  const long = `${'x'.repeat(1_000_000)}\n`;
  terminal.write(Buffer.from(long));
  terminal.write(Buffer.from('lost\n'));
  for (let count = 0; count < 200 && !taken().includes('b\n'); count += 1) {
    await takeAll();
    terminal.write(Buffer.from('b\n'));
  }
  await takeAll();
  expect(taken().replaceAll('b\n', '')).toBe(`a\n${long}`);
});

test('a wire that takes nothing for another reason than being full says so', () => {
  const { path } = opened();
  const flags = constants.O_NOCTTY | constants.O_NONBLOCK;
  const ends = {
    master: openSync(path, constants.O_RDONLY | flags),
    slave: openSync(path, constants.O_RDWR | flags),
    pty: path,
  };
  const onlyRead = openPseudoTerminal({ load: () => ({ open: () => ends }) });
  if (!onlyRead.ok) throw new Error(onlyRead.error);
  onTestFinished(() => onlyRead.value.close());
  expect(() => onlyRead.value.write(Buffer.from('78.42\n'))).toThrow(/EBADF/);
});
