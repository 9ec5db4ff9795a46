import { numberWords, worded } from '../wording/index.ts';
import type { RunSettings } from './run-settings.ts';

/** What a run is reckoned from. */
type ReckonedFrom = Pick<RunSettings, 'charge' | 'pressure' | 'probe'>;

/** Something of its settings that nobody stated. */
export type AssumedPart = 'volume' | 'strength' | 'pressure' | 'probe-kind';

/**
 * What of a run's settings nobody stated, so that it is only assumed: the one list that Prepare, record, books and report go by.
 *
 * @param settings charge, air pressure and probe
 *
 * Source: this project's rule.
 * @example
 * assumedParts(defaultRunSettings) // => ["pressure"]
 */
export function assumedParts({ charge, pressure, probe }: ReckonedFrom): readonly AssumedPart[] {
  return [
    ...(charge.assumed ?? []),
    ...(pressure.source === 'assumed' ? (['pressure'] as const) : []),
    ...(probe.assumed ?? []),
  ];
}

/**
 * The same as sentences that say what is taken in its place, ± for k = 2.
 *
 * @param settings charge [mL, % vol], air pressure [kPa] and probe [K, s]
 * @param parts those to tell of
 *
 * Source: this project's rule.
 * @example
 * assumedWords({ ...defaultRunSettings, charge: { ...defaultRunSettings.charge, assumed: ['volume'] } }, ['volume'])
 * // => ["Nobody stated the volume of the charge: 350 mL is assumed."]
 */
export function assumedWords(
  settings: ReckonedFrom,
  parts: readonly AssumedPart[] = assumedParts(settings),
): readonly string[] {
  return assumedParts(settings).flatMap((part) =>
    parts.includes(part) ? sentences[part](settings) : [],
  );
}

const sentences: Readonly<Record<AssumedPart, (settings: ReckonedFrom) => string>> = {
  volume: ({ charge }) =>
    worded('Nobody stated the volume of the charge: {volume} mL is assumed.', {
      volume: charge.volumeMl,
    }),
  strength: ({ charge }) =>
    worded('Nobody stated the strength of the charge: {strength} % vol is assumed.', {
      strength: charge.strengthAbv,
    }),
  pressure: ({ pressure }) =>
    worded('Nobody stated the air pressure: {pressure} kPa ± {doubt} kPa is assumed.', {
      pressure: numberWords(pressure.pressureKPa, 0),
      doubt: numberWords(2 * pressure.standardUncertaintyKPa, 0),
    }),
  // What ice and steam said of it holds for any kind; how fast it follows, only its kind tells.
  'probe-kind': ({ probe }) =>
    probe.offsetK !== 0 || probe.gain !== 1
      ? worded('Nobody stated the kind of probe: one that follows within {lag} s is assumed.', {
          lag: numberWords(probe.lagT90S, 0),
        })
      : worded(
          'Nobody stated the kind of probe: one right to ± {doubt} K that follows within {lag} s is assumed.',
          {
            doubt: numberWords(2 * probe.standardUncertaintyK, 1),
            lag: numberWords(probe.lagT90S, 0),
          },
        ),
};
