/** Processes beside the services: each can only fail alone. */

export { forkSideProcess } from './fork-side-process.ts';
export { portToStarter } from './port-to-starter.ts';
export type { SidePort, SideProcess } from './side-process.ts';
