import process from 'node:process';
import { fail, succeed } from '#shared-core';
import type { ByteLine, OpenByteLine } from './byte-line.ts';
import { watchForHangUp } from './hang-up.ts';
import { portProblem } from './port-problem.ts';

/**
 * Opens a real serial port, 8 data bits, one stop bit. `hupcl` is off so that closing
 * does not drop the control lines, which makes many boards restart.
 */
export const openSerialLine: OpenByteLine = async (address, listeners) => {
  // Here and not at the top: the services import this folder too, and must live where the native part is missing.
  const { SerialPort } = await import('serialport');
  const path = preferCallout(address.path, process.platform);
  const port = new SerialPort({
    path,
    baudRate: address.baudRate,
    parity: address.parity,
    hupcl: false,
    autoOpen: false,
  });
  const problem = (error: Error) => portProblem(path, error.message, process.platform);
  return new Promise((resolve) => {
    port.open((error) => {
      if (error) {
        resolve(fail(problem(error)));
        return;
      }
      let closing = false;
      port.on('data', (chunk: Uint8Array) => listeners.bytes(chunk));
      // Read errors are followed by 'close'; without a listener here they would end the process.
      port.on('error', () => {});
      const stopWatching =
        process.platform === 'win32'
          ? () => {}
          : watchForHangUp(
              () => port.port?.fd ?? null,
              () => port.close(),
            );
      port.once('close', (reason: Error | null) => {
        stopWatching();
        if (!closing) listeners.closed(reason ? problem(reason) : null);
      });
      const line: ByteLine = {
        write: (bytes) =>
          new Promise((written) => {
            if (!port.isOpen) {
              written(fail({ kind: 'port-not-found', path }));
              return;
            }
            port.write(Buffer.from(bytes), (failed) => {
              written(failed ? fail(problem(failed)) : succeed(null));
            });
          }),
        changeSpeed: (baudRate) =>
          new Promise((changed) => {
            port.update({ baudRate }, (failed) => {
              changed(failed ? fail(problem(failed)) : succeed(null));
            });
          }),
        close: () =>
          new Promise((closed) => {
            closing = true;
            stopWatching();
            if (port.isOpen) port.close(() => closed());
            else closed();
          }),
      };
      resolve(succeed(line));
    });
  });
};

/** The `tty.` name on macOS blocks until a modem answers; the `cu.` name is the same plug without that. */
export function preferCallout(path: string, platform: string): string {
  return platform === 'darwin' ? path.replace(/^\/dev\/tty\./, '/dev/cu.') : path;
}
