/** How a probe speaks and where it sits, as a person tells it. */
export { FindSpeech } from './find-speech.tsx';
export { HeadQuestion } from './head-question.tsx';
export { LeftOutNote } from './left-out-note.tsx';
export { hasHead, isSimulated } from './probe-facts.ts';
export { ProbeSpeech } from './probe-speech.tsx';
