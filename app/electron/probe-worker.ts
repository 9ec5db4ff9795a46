/** Entry of the utility process that reads serial ports. */
import { runProbeWorker } from '#main';

runProbeWorker();
