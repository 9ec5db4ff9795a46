/** One end of the wire between the services and the process that reads serial ports, and that process as its owner sees it. */
export type {
  SidePort as WorkerPort,
  SideProcess as ProbeWorker,
} from '../../side-process/index.ts';
