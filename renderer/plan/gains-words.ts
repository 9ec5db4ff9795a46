import { type InstrumentGains, say } from '#shared-core';

/** What each instrument would narrow, in one line; what would narrow nothing is not offered. */
export function gainsSentence({
  asItIsS,
  withStatedHeatS,
  withBalanceS,
  withPotProbeS,
}: InstrumentGains): string {
  const asItIs = wholeMinutes(asItIsS);
  const narrows = (widthS: number | null): widthS is number =>
    widthS !== null && wholeMinutes(widthS) < asItIs;
  const offers = [
    narrows(withBalanceS) &&
      say('with a balance under the receiver ± {minutes} min', {
        minutes: wholeMinutes(withBalanceS),
      }),
    narrows(withStatedHeatS) &&
      say('with the heat stated ± {minutes} min', { minutes: wholeMinutes(withStatedHeatS) }),
    narrows(withPotProbeS) &&
      say('with a probe in the pot ± {minutes} min', { minutes: wholeMinutes(withPotProbeS) }),
  ].filter((offer) => offer !== false);
  const known = say('Half-way, the end of the main fraction will be known to ± {minutes} min', {
    minutes: asItIs,
  });
  return offers.length === 0 ? `${known}.` : `${known}; ${offers.join(', ')}.`;
}

/** To the minute and never to none: that would promise too much. */
function wholeMinutes(seconds: number): number {
  return Math.max(1, Math.round(seconds / 60));
}
