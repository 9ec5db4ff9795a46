import type { Result, ServiceProblem } from '#shared-core';
import type { ByteLine, LineAddress, OpenByteLine } from '../port/byte-line.ts';

/** The one port that is being searched; its speed changes without another opening where it can. */
export interface SearchLine {
  send(bytes: Uint8Array): void;
  listen(listener: (chunk: Uint8Array) => void): void;
  wait(seconds: number): Promise<void>;
  /** Another speed; another parity opens the port again. */
  change(baudRate: number, parity: LineAddress['parity']): Promise<Result<null, ServiceProblem>>;
  close(): Promise<void>;
}

export async function openSearchLine(
  path: string,
  openLine: OpenByteLine,
  wait: (seconds: number) => Promise<void>,
): Promise<Result<SearchLine, ServiceProblem>> {
  let heard: (chunk: Uint8Array) => void = () => {};
  let line: ByteLine;
  let parity: LineAddress['parity'] = 'none';

  const open = (address: LineAddress) =>
    openLine(address, { bytes: (chunk) => heard(chunk), closed: () => {} });

  const first = await open({ path, baudRate: 115_200, parity });
  if (!first.ok) return first;
  line = first.value;
  return {
    ok: true,
    value: {
      wait,
      send: (bytes) => void line.write(bytes),
      listen: (listener) => {
        heard = listener;
      },
      async change(baudRate, wantedParity) {
        if (wantedParity === parity) return line.changeSpeed(baudRate);
        await line.close();
        const again = await open({ path, baudRate, parity: wantedParity });
        if (!again.ok) return again;
        line = again.value;
        parity = wantedParity;
        return { ok: true, value: null };
      },
      close: () => line.close(),
    },
  };
}
