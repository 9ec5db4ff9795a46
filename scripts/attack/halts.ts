import { setTimeout as pause } from 'node:timers/promises';
import type { Attack } from './attacks.ts';
import { answerTo, openViewer } from './viewer.ts';

const haltedSyncS = 5;

/** What stands still beside a run that is recorded, each for so long; the reader of the probe alone goes on. */
export function halts(seconds: number): readonly Attack[] {
  const halted = () => pause(1000 * seconds);
  return [
    {
      name: `the services halted for ${seconds} s`,
      async run({ signal }) {
        signal('SIGSTOP');
        await halted();
        signal('SIGCONT');
        return 'went on';
      },
    },
    {
      name: `the desk halted for ${seconds} s, and asked meanwhile`,
      async run(services) {
        const viewer = await openViewer(services);
        await answerTo(viewer, '{"id":1,"name":"runs/list","body":{}}');
        services.tell('halt-desk');
        const answer = answerTo(viewer, '{"id":2,"name":"runs/list","body":{}}');
        await halted();
        services.tell('wake-desk');
        const { result } = JSON.parse(await answer) as { result: { ok: boolean } };
        viewer.terminate();
        return result.ok ? 'answered once awake' : 'refused';
      },
    },
    {
      name: `a window halted for ${seconds} s`,
      async run(services) {
        const viewer = await openViewer(services);
        viewer.pause();
        await halted();
        viewer.resume();
        const answer = await answerTo(viewer, '{"id":1,"name":"run/status","body":{}}');
        viewer.terminate();
        return answer.includes('"recording"') ? 'answered once awake' : 'lost';
      },
    },
    {
      name: `syncs that take ${haltedSyncS} s, for ${seconds} s`,
      async run(services) {
        services.tell('slow-syncs');
        await halted();
        services.tell('usual-syncs');
        await pause(1000 * haltedSyncS);
        return 'went on';
      },
    },
  ];
}
