import { type ChildProcess, spawn } from 'node:child_process';
import type { ServiceHandler } from '../service-handler.ts';

export interface AwakeCommand {
  readonly command: string;
  readonly commandArguments: readonly string[];
}

/** Windows ends the wish with the process that made it; ES_CONTINUOUS | ES_SYSTEM_REQUIRED | ES_DISPLAY_REQUIRED of winbase.h. */
const windowsScript = [
  '$f = \'[DllImport("kernel32.dll")] public static extern uint SetThreadExecutionState(uint s);\'',
  '$k = Add-Type -MemberDefinition $f -Name K -Namespace S -PassThru',
  '[void]$k::SetThreadExecutionState([uint32]2147483651)',
  '[void][Console]::In.ReadToEnd()',
].join('; ');

/** The platform's own program that keeps the computer awake as long as its standard input is open. */
export function awakeCommand(platform: NodeJS.Platform): AwakeCommand {
  switch (platform) {
    case 'darwin':
      return { command: 'caffeinate', commandArguments: ['-di', 'cat'] };
    case 'win32':
      return {
        command: 'powershell.exe',
        commandArguments: ['-NoProfile', '-NonInteractive', '-Command', windowsScript],
      };
    default:
      return {
        command: 'systemd-inhibit',
        commandArguments: [
          '--what=sleep:idle',
          '--who=Still Head Monitor',
          '--why=A run is being recorded',
          '--mode=block',
          'cat',
        ],
      };
  }
}

/**
 * Keeps the computer awake while there is a run. Where it can't be, nothing is lost but the wish; the returned function ends it. The
 * keeper hangs on a pipe of this process, so it can't outlive it.
 */
export function keepAwake(
  services: Pick<ServiceHandler, 'on'>,
  { command, commandArguments }: AwakeCommand,
): () => void {
  let keeper: ChildProcess | null = null;

  function letGo(): void {
    keeper?.stdin?.end();
    keeper = null;
  }

  const stop = services.on('recording', ({ state }) => {
    if (state === 'idle') {
      letGo();
    } else if (keeper === null) {
      keeper = spawn(command, commandArguments, { stdio: ['pipe', 'ignore', 'ignore'] });
      keeper.on('error', () => {});
      keeper.stdin?.on('error', () => {});
    }
  });
  return () => {
    stop();
    letGo();
  };
}
