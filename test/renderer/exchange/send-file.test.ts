import { expect, test } from 'vitest';
import { contractLimits, defaultRunSettings, type Service, succeed } from '#shared-core';
import { sendFile } from '../../../renderer/exchange/send-file.ts';

test('a file goes over in pieces that are never all in memory, and comes whole', async () => {
  const content = Uint8Array.from(
    { length: 2 * contractLimits.pieceBytes + 17 },
    (_, index) => index % 251,
  );
  let received = Buffer.alloc(0);
  const shares: number[] = [];
  const service = {
    on: () => () => {},
    request: async (name: string, body: { readonly base64?: string }) => {
      if (name === 'imports/begin') return succeed({ importId: 'import-1' });
      if (name === 'imports/finish') return succeed({ runId: 'r', remarks: [], rejectedRows: [] });
      const piece = Buffer.from(body.base64 ?? '', 'base64');
      expect(piece.length).toBeLessThanOrEqual(contractLimits.pieceBytes);
      received = Buffer.concat([received, piece]);
      return succeed({ receivedBytes: received.length });
    },
  } as unknown as Service;
  const says = { encoding: 'auto', mapping: null, settings: defaultRunSettings } as const;
  const sent = await sendFile(service, new Blob([content]), says, (share) => shares.push(share));
  expect(sent.ok).toBe(true);
  expect(received.equals(Buffer.from(content))).toBe(true);
  expect([shares.length, shares.at(-1)]).toEqual([3, 1]);
});
