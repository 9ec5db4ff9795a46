import type { Session } from 'electron';

/** The window needs no camera, no position, no device: all but filling the screen is refused, asked for or looked up. */
export function setupPermissions(
  session: Pick<
    Session,
    'setPermissionRequestHandler' | 'setPermissionCheckHandler' | 'setDevicePermissionHandler'
  > & { on(name: 'select-serial-port', listener: SelectSerialPort): unknown },
): void {
  session.setPermissionRequestHandler((_contents, permission, answer) =>
    answer(permission === 'fullscreen'),
  );
  session.setPermissionCheckHandler((_contents, permission) => permission === 'fullscreen');
  session.setDevicePermissionHandler(() => false);
  // The probe is opened by the services; a page asking for a port of its own gets none.
  session.on('select-serial-port', (event, _ports, _contents, choose) => {
    event.preventDefault();
    choose('');
  });
}

type SelectSerialPort = (
  event: { preventDefault(): void },
  ports: unknown,
  contents: unknown,
  choose: (portId: string) => void,
) => void;
