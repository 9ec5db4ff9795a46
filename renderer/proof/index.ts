export { ProofOfRun } from './proof-of-run.tsx';
