import { planRun } from '#shared-core';
import { answerQuestions } from '../beside/index.ts';

// A plan is some dozens of simulated runs: half a second in which the window must go on answering.
answerQuestions(planRun);
