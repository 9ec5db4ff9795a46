/** Polynomials of one thermocouple type. Powers rise from 0; emf in mV, temperature in °C. */
export interface ThermocoupleCoefficients {
  readonly emfBelowZero: readonly number[];
  readonly emfAboveZero: readonly number[];
  /** Type K adds a0 exp(a1 (t − a2)²) above 0 °C. */
  readonly emfBump: readonly [number, number, number] | null;
  readonly inverseBelowZero: readonly number[];
  readonly inverseAboveZero: readonly number[];
  readonly lowC: number;
  readonly highC: number;
}

/**
 * ITS-90 reference functions and approximate inverses of the two types that school probes use.
 *
 * Source: NIST ITS-90 Thermocouple Database, SRD 60; NIST Monograph 175 (1993).
 */
export const thermocoupleCoefficients: Readonly<Record<'K' | 'T', ThermocoupleCoefficients>> = {
  K: {
    emfBelowZero: [
      0, 0.39450128025e-1, 0.23622373598e-4, -0.32858906784e-6, -0.49904828777e-8,
      -0.67509059173e-10, -0.57410327428e-12, -0.31088872894e-14, -0.10451609365e-16,
      -0.19889266878e-19, -0.16322697486e-22,
    ],
    emfAboveZero: [
      -0.17600413686e-1, 0.38921204975e-1, 0.18558770032e-4, -0.99457592874e-7, 0.31840945719e-9,
      -0.56072844889e-12, 0.56075059059e-15, -0.32020720003e-18, 0.97151147152e-22,
      -0.12104721275e-25,
    ],
    emfBump: [0.1185976, -0.1183432e-3, 126.9686],
    inverseBelowZero: [
      0, 25.173462, -1.1662878, -1.0833638, -0.8977354, -0.37342377, -0.086632643, -0.010450598,
      -0.00051920577,
    ],
    inverseAboveZero: [
      0, 25.08355, 0.07860106, -0.2503131, 0.0831527, -0.01228034, 0.0009804036, -4.41303e-5,
      1.057734e-6, -1.052755e-8,
    ],
    lowC: -200,
    highC: 500,
  },
  T: {
    emfBelowZero: [
      0, 0.38748106364e-1, 0.44194434347e-4, 0.11844323105e-6, 0.20032973554e-7, 0.90138019559e-9,
      0.22651156593e-10, 0.36071154205e-12, 0.38493939883e-14, 0.28213521925e-16, 0.14251594779e-18,
      0.48768662286e-21, 0.1079553927e-23, 0.13945027062e-26, 0.79795153927e-30,
    ],
    emfAboveZero: [
      0, 0.38748106364e-1, 0.3329222788e-4, 0.20618243404e-6, -0.21882256846e-8, 0.10996880928e-10,
      -0.30815758772e-13, 0.4547913529e-16, -0.27512901673e-19,
    ],
    emfBump: null,
    inverseBelowZero: [
      0, 25.949192, -0.21316967, 0.79018692, 0.42527777, 0.13304473, 0.020241446, 0.0012668171,
    ],
    inverseAboveZero: [0, 25.928, -0.7602961, 0.04637791, -0.002165394, 6.048144e-5, -7.293422e-7],
    lowC: -200,
    highC: 400,
  },
};
