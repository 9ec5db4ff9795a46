/**
 * What a test file works out before its first test must be right: in a kept thread the mutant of the run before would still be there.
 * The mutation tool sets the one to be tested before the first test.
 */
const tool: { activeMutant?: string } | undefined = Reflect.get(globalThis, '__stryker__');
if (tool !== undefined) Reflect.deleteProperty(tool, 'activeMutant');
