/** Outside the physics folders a description is enough. */
export function raiseAlarm(level: number): number {
  return level;
}

export function silent(): void {}
