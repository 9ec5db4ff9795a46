import { readFileSync } from 'node:fs';
import path from 'node:path';

/** One measured equilibrium: liquid x boils at T under P and gives vapour y (where it was measured). */
export interface VlePoint {
  readonly temperatureK: number;
  readonly pressureKPa: number;
  readonly x: number;
  readonly y: number | null;
}

/** A published set, with the standard uncertainties it is weighted by. */
export interface VleSet {
  readonly name: string;
  readonly kind: 'isobaric' | 'isothermal';
  readonly points: readonly VlePoint[];
  /** Standard uncertainty of temperature, that of pressure included [K]. */
  readonly temperatureUncertaintyK: number;
  /** Standard uncertainty of the vapour mole fraction. */
  readonly vapourUncertainty: number;
}

interface VleSource {
  readonly name: string;
  readonly file: string;
  readonly fixed: { readonly pressureKPa: number } | { readonly temperatureK: number };
  readonly temperatureUncertaintyK: number;
  readonly vapourUncertainty: number;
}

/**
 * The training sets. Weights follow the scatter of each set around any smooth curve: static
 * measurements and recent stills are tight, the still of 1932 is not.
 */
const sources: readonly VleSource[] = [
  {
    name: 'Kamihama 2012, 101.3 kPa',
    file: 'isobaric_101300_kamihama_2012.csv',
    fixed: { pressureKPa: 101.3 },
    temperatureUncertaintyK: 0.06,
    vapourUncertainty: 0.004,
  },
  {
    name: 'Carey & Lewis 1932, 101.325 kPa',
    file: 'isobaric_101325_carey_lewis_1932.csv',
    fixed: { pressureKPa: 101.325 },
    temperatureUncertaintyK: 0.25,
    vapourUncertainty: 0.008,
  },
  {
    name: 'Voutsas 2011, 32.86 kPa',
    file: 'isobaric_32860_voutsas_2011.csv',
    fixed: { pressureKPa: 32.86 },
    temperatureUncertaintyK: 0.12,
    vapourUncertainty: 0.008,
  },
  {
    name: 'Pemberton & Mash 1978, 30 °C',
    file: 'isothermal_303.15K_pemberton_mash_1978.csv',
    fixed: { temperatureK: 303.15 },
    temperatureUncertaintyK: 0.03,
    vapourUncertainty: 0.004,
  },
  {
    name: 'Kurihara 1995, 55 °C',
    file: 'isothermal_328.15K_kurihara_1995.csv',
    fixed: { temperatureK: 328.15 },
    temperatureUncertaintyK: 0.06,
    vapourUncertainty: 0.004,
  },
  {
    name: 'Pemberton & Mash 1978, 90 °C',
    file: 'isothermal_Px_363.15K_T90.csv',
    fixed: { temperatureK: 363.15 },
    temperatureUncertaintyK: 0.05,
    vapourUncertainty: 0.004,
  },
];

/** Reads all training sets from a folder; pure-component rows are left out. */
export function readVleSets(folder: string): readonly VleSet[] {
  return sources.map(({ name, file, fixed, temperatureUncertaintyK, vapourUncertainty }) => ({
    name,
    kind: 'pressureKPa' in fixed ? 'isobaric' : 'isothermal',
    points: readPoints(readFileSync(path.join(folder, file), 'utf8'), fixed),
    temperatureUncertaintyK,
    vapourUncertainty,
  }));
}

function readPoints(text: string, fixed: VleSource['fixed']): readonly VlePoint[] {
  const [header = '', ...rows] = text.split('\n').filter((line) => line && !line.startsWith('#'));
  const columns = header.trim().split(',');
  return rows
    .map((row) => {
      const cells = row.split(',').map(Number);
      const cell = (name: string): number | null => cells[columns.indexOf(name)] ?? null;
      const x = cell('x1');
      const temperatureK =
        'temperatureK' in fixed ? fixed.temperatureK : (cell('T_C') ?? NaN) + 273.15;
      const pressureKPa = 'pressureKPa' in fixed ? fixed.pressureKPa : (cell('P_kPa') ?? NaN);
      if (x === null || Number.isNaN(temperatureK + pressureKPa)) {
        throw new Error(`Unreadable row: ${row}`);
      }
      return { temperatureK, pressureKPa, x, y: cell('y1') };
    })
    .filter(({ x }) => x > 0 && x < 1);
}
