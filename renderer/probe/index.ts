export { LeftOutNote } from './left-out-note.tsx';
export { ProbeSpeech } from './probe-speech.tsx';
