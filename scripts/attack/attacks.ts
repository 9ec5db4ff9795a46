import { once } from 'node:events';
import { connect, type Socket } from 'node:net';
import { setTimeout as pause } from 'node:timers/promises';
import { WebSocket } from 'ws';
import type { AttackedPlace, AttackedServices } from './attacked-services.ts';
import { classComesIn, classRunsWild } from './class-attacks.ts';
import { answerTo, isAnswer, openSocket, openViewer } from './viewer.ts';

/** Something that another program on this computer may try; answers in a word what became of it. */
export interface Attack {
  readonly name: string;
  readonly run: (services: AttackedServices) => Promise<string>;
}

const megabyte = 1024 * 1024;
const portsAskedPerS = 200;
const portsAskedForS = 5;
const refusedUpgrades = 1500;
/** As many as a server lets in at once, so that each is really answered. */
const upgradesAtOnce = 50;

export const attacks: readonly Attack[] = [
  {
    name: 'a first message of 16 MB',
    async run(place) {
      const socket = await openSocket(place);
      return closeOf(socket, () => socket.send('x'.repeat(16 * megabyte)));
    },
  },
  {
    name: "a viewer's message of 16 MB",
    async run(place) {
      const viewer = await openViewer(place);
      return closeOf(viewer, () => viewer.send('x'.repeat(16 * megabyte)));
    },
  },
  {
    name: 'thirty sockets, each with 15 MB of a message that never ends',
    async run(place) {
      const sockets = await Promise.all(
        Array.from({ length: 30 }, () => openSocket(place).catch(() => null)),
      );
      const open = sockets.filter((socket) => socket !== null);
      for (const socket of open) socket.send('x'.repeat(15 * megabyte), { fin: false });
      await pause(3000);
      const left = open.filter(({ readyState }) => readyState === WebSocket.OPEN);
      for (const socket of left) socket.terminate();
      return `${open.length} let in, ${left.length} left`;
    },
  },
  {
    name: 'thirty viewers, each with 0.9 MB of a message that never ends',
    async run(place) {
      const viewers: WebSocket[] = [];
      for (let tries = 0; tries < 30; tries += 1) {
        const viewer = await openViewer(place).catch(() => null);
        if (viewer !== null) viewers.push(viewer);
      }
      for (const viewer of viewers) viewer.send('x'.repeat(0.9 * megabyte), { fin: false });
      await pause(2000);
      for (const viewer of viewers) viewer.terminate();
      return `${viewers.length} let in`;
    },
  },
  {
    name: "a viewer's requests nested 200 000 and 30 000 deep",
    async run(place) {
      const viewer = await openViewer(place);
      const answers: string[] = [];
      for (const depth of [200_000, ...Array<number>(20).fill(30_000)]) {
        const body = `${'['.repeat(depth)}${']'.repeat(depth)}`;
        const answer = await answerTo(viewer, `{"id":1,"name":"runs/read","body":${body}}`);
        answers.push(/"kind":"([a-z-]+)"/.exec(answer)?.[1] ?? 'done');
      }
      viewer.terminate();
      return [...new Set(answers)].join(', ');
    },
  },
  {
    name: `a viewer who asks for the ports ${portsAskedPerS} times a second`,
    async run(place) {
      const viewer = await openViewer(place);
      let answers = 0;
      viewer.on('message', (data) => {
        if (isAnswer(String(data))) answers += 1;
      });
      const asked = portsAskedPerS * portsAskedForS;
      for (let id = 0; id < asked; ) {
        for (let burst = 0; burst < 10; burst += 1, id += 1)
          viewer.send(JSON.stringify({ id, name: 'ports/list', body: {} }));
        await pause(10_000 / portsAskedPerS);
      }
      viewer.terminate();
      return `${answers < asked ? 'some' : 'all'} of ${asked} answered meanwhile`;
    },
  },
  {
    name: `${refusedUpgrades} upgrades from a foreign page that keep their end open`,
    async run(place) {
      let refused = 0;
      for (let sent = 0; sent < refusedUpgrades; sent += upgradesAtOnce) {
        const callers = Array.from({ length: upgradesAtOnce }, () => foreignUpgrade(place));
        const answers = await Promise.all(callers);
        refused += answers.filter((answer) => !answer.includes('101')).length;
      }
      return `${refused} refused and let go of`;
    },
  },
  { name: 'a class of thirty screens that comes in at once', run: classComesIn },
  { name: 'thirty screens that ask without end and never end a message', run: classRunsWild },
];

async function closeOf(socket: WebSocket, act: () => void): Promise<string> {
  const closed = once(socket, 'close');
  act();
  await closed;
  return 'cut off';
}

/** What it was answered, if that was not lost with the end, once the other side has let go of it. */
function foreignUpgrade({ port }: AttackedPlace): Promise<string> {
  const caller: Socket = connect({ port, host: '127.0.0.1', allowHalfOpen: true });
  let answer = '';
  caller.setEncoding('latin1').on('data', (part) => {
    answer += part;
  });
  caller.write(
    `GET /service HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\nOrigin: http://rebound.example\r\n` +
      'Connection: Upgrade\r\nUpgrade: websocket\r\nSec-WebSocket-Version: 13\r\n' +
      'Sec-WebSocket-Key: dGhlIHNhbXBsZSBub25jZQ==\r\n\r\n',
  );
  return new Promise((resolve) => {
    // Let go of, a caller is told by a reset when it writes on.
    const poke = setInterval(() => caller.write('x'), 20);
    caller.on('error', () => {});
    caller.on('close', () => {
      clearInterval(poke);
      resolve(answer);
    });
  });
}
