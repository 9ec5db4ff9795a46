/** Entry of the process that reads serial ports; started by the services, never by hand. */
import { runProbeWorker } from './run-probe-worker.ts';

runProbeWorker();
