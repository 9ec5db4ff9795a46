import { answerQuestions } from '../beside/index.ts';
import { judged } from './judged.ts';

// Thousands of possible ferments are weighed against each reading: up to a second in which the window must go on answering.
answerQuestions(judged);
