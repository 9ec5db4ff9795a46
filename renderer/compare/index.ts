/** Several runs laid over each other, and what another setting would have changed. */
export { ChooseRuns } from './choose-runs.tsx';
export { CompareRuns } from './compare-runs.tsx';
export { WhatIf } from './what-if.tsx';
