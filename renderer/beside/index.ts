/** Work done beside the window, which goes on answering meanwhile; nothing here brings React into a worker. */
export { answerQuestions } from './answer-questions.ts';
export { type Asker, createAsker } from './create-asker.ts';
