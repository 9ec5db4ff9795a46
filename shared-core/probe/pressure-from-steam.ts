import { judgeSteamReading, stationPressure } from '../atmosphere/index.ts';
import { azeotropeSlopeKPerKPa } from '../equilibrium/index.ts';
import { fail, type Result, succeed } from '../result/index.ts';
import { type RunSettings, type SteamReading, settingRanges } from '../run/index.ts';
import { worded } from '../wording/index.ts';
import { scaleDoubts } from './scale-doubts.ts';

/** The air pressure as a run's settings hold it, what it is worth, and a doubt where the place or the probe does not fit it. */
export interface SteamPressure {
  readonly setting: RunSettings['pressure'];
  /** Of where the limit lies on this very probe [K]. */
  readonly onProbeStandardUncertaintyK: number;
  readonly sentence: string;
  readonly doubt: string | null;
}

/** Why a reading is none of steam, in words that say what to do. */
export interface NoSteam {
  readonly kind: 'too-cool' | 'too-hot';
  readonly sentence: string;
}

/**
 * The air pressure from what the head probe shows in the steam of well-boiling water, `p = psat(offset + gain · shown)`. As an air pressure
 * it is only as good as the probe; as the place of the limit on this very probe it is good to some tenths, since the probe's error is
 * in both.
 *
 * @param steam what the probe shows [°C], before its correction, the standard uncertainty of the settled reading and of
 * the probe between steam and plateau [K]
 * @param known the probe as the settings hold it (offset [K], gain, standard uncertainty [K]); altitude [m] or null
 * @returns the setting, or why the reading is none of steam
 *
 * Source: IAPWS SR1-86(1992) for psat; see `stationPressure` and `scaleDoubts` for the doubts.
 * @example
 * const known = { probe: { offsetK: 0, gain: 1, standardUncertaintyK: 0.29 }, altitudeM: null };
 * const steamAt = (shownC) => ({ shownC, standardUncertaintyK: 0.03, gapStandardUncertaintyK: 0.06 });
 * pressureFromSteam(steamAt(99.974), known).value.setting.pressureKPa // ≈ 101.325 ± 0.003
 * pressureFromSteam(steamAt(71), known).error.kind // => "too-cool"
 */
export function pressureFromSteam(
  steam: SteamReading,
  known: {
    readonly probe: Pick<RunSettings['probe'], 'offsetK' | 'gain' | 'standardUncertaintyK'>;
    readonly altitudeM: number | null;
  },
): Result<SteamPressure, NoSteam> {
  const { probe, altitudeM } = known;
  const steamC = probe.offsetK + probe.gain * steam.shownC;
  const probeStandardUncertaintyK = Math.hypot(
    probe.standardUncertaintyK,
    steam.gapStandardUncertaintyK,
  );
  const judgement = judgeSteamReading({
    steamC,
    probeStandardUncertaintyK,
    altitudeM,
    possibleKPa: settingRanges.pressureKPa,
  });
  if (judgement.kind === 'too-cool' || judgement.kind === 'too-hot') return fail(judgement);
  const air = stationPressure({
    kind: 'steam',
    steamC,
    readingStandardUncertaintyK: steam.standardUncertaintyK,
    probeStandardUncertaintyK,
  });
  const { pressureKPa, standardUncertaintyKPa } = air;
  const setting = {
    pressureKPa,
    standardUncertaintyKPa,
    source: 'steam',
    altitudeM,
    steam,
  } as const;
  const onProbeStandardUncertaintyK = onProbeSdK(setting, probe);
  return succeed({
    setting,
    onProbeStandardUncertaintyK,
    sentence: worded(
      '{air} But the limit as this very probe will show it is known to ± {doubt} K (k = 2): what the probe is off by is in both, and falls out.',
      { air: air.sentence, doubt: (2 * onProbeStandardUncertaintyK).toFixed(1) },
    ),
    doubt: judgement.kind === 'plausible' ? null : judgement.sentence,
  });
}

function onProbeSdK(
  pressure: RunSettings['pressure'],
  probe: Pick<RunSettings['probe'], 'standardUncertaintyK'>,
): number {
  const { temperatureUncertaintyK, pressureUncertaintyKPa } = scaleDoubts({ probe, pressure });
  const slopeKPerKPa = azeotropeSlopeKPerKPa(pressure.pressureKPa);
  return Math.hypot(temperatureUncertaintyK, slopeKPerKPa * pressureUncertaintyKPa);
}
