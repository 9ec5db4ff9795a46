/** The week before: plan and log of a ferment. */
export { ChargedFrom } from './charged-from.tsx';
export { FermentButtons } from './ferment-buttons.tsx';
export { FermentCards } from './ferment-cards.tsx';
export { stateWords } from './ferment-words.ts';
export { nextActWords } from './next-act-words.ts';
export { useFerments } from './use-ferments.ts';
export { useJudgement } from './use-judgement.ts';
export { WeekReplay } from './week-replay.tsx';
