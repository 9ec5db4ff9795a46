/** Entry of the process that goes through whole runs; started by the services, never by hand. */
import { runDesk } from './run-desk.ts';
import { tidyMemory } from './tidy-memory.ts';

tidyMemory();
runDesk();
