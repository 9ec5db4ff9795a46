/**
 * Names the model behind stages, estimates and alarms; recorded with every run. Raise it whenever the same
 * inputs may give other verdicts, so that a later replay can say that the model has changed since.
 */
export const modelVersion = '24';
