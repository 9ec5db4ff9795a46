/**
 * How long something must last before it is believed, said or acted on: three times for all rules. Chosen here: with
 * 20 or 45 s for the second and 45 or 90 s for the third the calls of 60 runs heated by hand are the same. Where another time stands
 * beside a rule, it says why.
 */

/** One odd second is an accident and a second one may be its echo: what three alike say is believed [s]. */
export const confirmedAfterS = 3;
/** Some two or three lags of a bulb: by then it has settled in whatever there is, and what was before tells nothing of it [s]. */
export const settledAfterS = 30;
/** What has stood for a minute does not come and go: it is worth a word, and a word is worth reading for as long [s]. */
export const lastsAfterS = 60;
