/**
 * Cubic expansion of soda-lime glass [1/K], for floats and pycnometers; from memory (ISO 4787 gives 27·10⁻⁶
 * for volumetric ware, alcoholometer standards 25·10⁻⁶). Ten kelvin are 0.24 kg/m³, some 0.2 % vol; the
 * spread between the values is a tenth of that.
 */
export const sodaLimeGlassExpansionPerK = 25e-6;
