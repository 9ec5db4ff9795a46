export { FindSpeech } from './find-speech.tsx';
export { LeftOutNote } from './left-out-note.tsx';
export { ProbeSpeech } from './probe-speech.tsx';
