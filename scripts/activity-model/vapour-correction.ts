/**
 * Rough second virial coefficients [m³/mol], from memory, for one question only: would a real-gas
 * vapour lower the error on sets left out of the fit?
 */
function virialM3PerMol(temperatureK: number): {
  readonly ethanol: number;
  readonly water: number;
} {
  return {
    ethanol: -1.03e-3 * (350 / temperatureK) ** 6,
    water: -0.57e-3 * (350 / temperatureK) ** 4.5,
  };
}

/** Factors on both partial pressures, `exp(−B_i (P − p_i)/RT)` (Lewis fugacity rule). */
export function realVapourFactors(
  temperatureK: number,
  pressureKPa: number,
  saturation: { readonly ethanolKPa: number; readonly waterKPa: number },
): { readonly ethanol: number; readonly water: number } {
  const virial = virialM3PerMol(temperatureK);
  const perKPa = 1000 / (8.314462618 * temperatureK);
  return {
    ethanol: Math.exp(-virial.ethanol * (pressureKPa - saturation.ethanolKPa) * perKPa),
    water: Math.exp(-virial.water * (pressureKPa - saturation.waterKPa) * perKPa),
  };
}
