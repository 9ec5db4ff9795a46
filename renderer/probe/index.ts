export { ProbeSpeech } from './probe-speech.tsx';
