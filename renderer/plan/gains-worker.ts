import { instrumentGains, type RunSettings } from '#shared-core';
import { answerQuestions } from '../beside/index.ts';

/** Stills drawn for each figure: it is told to the minute, and the person waits for it. */
const stills = 12;

// Some dozens of forecasts, each as a run makes them in half an hour: seconds in which the window must go on answering.
answerQuestions((settings: RunSettings) => instrumentGains(settings, stills));
