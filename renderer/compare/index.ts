export { ChooseRuns } from './choose-runs.tsx';
export { CompareRuns } from './compare-runs.tsx';
export { WhatIf } from './what-if.tsx';
