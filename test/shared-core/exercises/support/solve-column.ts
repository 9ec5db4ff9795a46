import type { Drawing } from '#shared-core';
import { type CurvePoint, numbersIn, readCurve } from './printed-sheet.ts';

/** Charged, collected, recovery, its U, and what is missing where the residue is given. */
export function solveBalance(text: string): readonly number[] {
  const liquids = [
    ...text.matchAll(
      /^(.+): \(([\d.]+)\s±\s([\d.]+)\)\sg with a mass fraction of ethanol of \(([\d.]+)\s±\s([\d.]+)\)\s%/gm,
    ),
  ].map(([, name = '', ...rest]) => {
    const [massG = 0, massU = 0, percent = 0, percentU = 0] = rest.map(Number);
    return {
      name,
      ethanolG: (massG * percent) / 100,
      relative: Math.hypot(massU / massG, percent > 0 ? percentU / percent : 0),
    };
  });
  const grams = (part: typeof liquids) => part.reduce((sum, { ethanolG }) => sum + ethanolG, 0);
  const charge = liquids.filter(({ name }) => name === 'Charge');
  const cuts = liquids.filter(({ name }) => name.startsWith('Cut'));
  const others = liquids.filter(({ name }) => name === 'Residue' || name === 'Hold-up');
  const [chargedG, cutsG] = [grams(charge), grams(cuts)];
  const recovery = (100 * cutsG) / chargedG;
  const u = Math.hypot(
    charge[0]?.relative ?? 0,
    ...cuts.map(({ ethanolG, relative }) => (relative * ethanolG) / cutsG),
  );
  const found = [chargedG, cutsG, recovery, recovery * u];
  return text.includes('How many grams are missing?')
    ? [...found, chargedG - cutsG - grams(others)]
    : found;
}

/** Steps between the drawn curve and the diagonal, the last one in part; then Fenske where it is asked for. */
export function solvePlates(text: string, figure: Drawing): readonly number[] {
  const [top = 0, pot = 0] = numbersIn(text, /Distillate x = ([\d.]+).*pot x = ([\d.]+)/);
  const curve = readCurve(figure).toSorted((a, b) => b.length - a.length)[0] ?? [];
  let [y, count] = [top, 0];
  while (count < 60) {
    const x = liquidBelow(curve, y);
    if (x <= pot) return withFenske(text, top, pot, count + (y - pot) / (y - x));
    count += 1;
    y = x;
  }
  throw new Error('The steps never reach the pot.');
}

function liquidBelow(curve: readonly CurvePoint[], y: number): number {
  const index = curve.findIndex((point) => point.y >= y);
  const [a, b] = [curve[index - 1], curve[index]];
  if (a === undefined || b === undefined) return 0;
  return a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y);
}

function withFenske(text: string, top: number, pot: number, steps: number): readonly number[] {
  if (!text.includes('Fenske')) return [steps];
  const [atPot = 1, atTop = 1] = numbersIn(
    text,
    /over the pot ([\d.]+), over the distillate ([\d.]+\d)/,
  );
  const separation = (top / (1 - top)) * ((1 - pot) / pot);
  return [steps, Math.log(separation) / Math.log(Math.sqrt(atPot * atTop))];
}

/** The mean distillate by trapezia over the printed table. */
export function solveRayleigh(text: string): readonly number[] {
  const [chargeMol = 1, chargeX = 0, distillateMol = 0] = numbersIn(
    text,
    /Charge: ([\d.]+) mol, x = ([\d.]+)\. Distillate: ([\d.]+) mol/,
  );
  const table = [...text.matchAll(/(0\.\d{4}):\s([\d.]+)/g)].map(([, x, value]) => ({
    x: Number(x),
    value: Number(value),
  }));
  const wanted = Math.log(chargeMol / (chargeMol - distillateMol));
  let sum = 0;
  let residueX = 0;
  for (const [index, to] of table.entries()) {
    const from = table[index - 1];
    if (from === undefined) continue;
    const area = ((from.value + to.value) / 2) * (from.x - to.x);
    if (sum + area >= wanted) {
      residueX = from.x - ((wanted - sum) / area) * (from.x - to.x);
      break;
    }
    sum += area;
  }
  const residueMol = chargeMol - distillateMol;
  return [(chargeMol * chargeX - residueMol * residueX) / distillateMol];
}
