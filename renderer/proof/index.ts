/** Strength by hydrometer or sight, for the liquids of a run. */
export { ProofOfRun } from './proof-of-run.tsx';
