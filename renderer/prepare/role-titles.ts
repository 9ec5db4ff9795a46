import { say } from '#shared-core';
import type { Role } from '../stores/index.ts';

/** Who looks before heat, as it begins a line. */
export const roleTitles: Readonly<Record<Role, string>> = {
  teacher: say('Teacher'),
  technician: say('Technician'),
  assistant: say('Assistant'),
};
