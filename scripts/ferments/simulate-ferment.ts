import { densityKgPerM3 } from '#shared-core';

/** A ferment whose kinetics the judge does not share: cells grow on nitrogen, take up sugar, and die. */
export interface FermentSetup {
  /** Fermentable sugar as hexose [g/L of must]. */
  readonly sugarGPerL: number;
  /** Share of it that is table sugar before yeast splits it, which weighs a twentieth less. */
  readonly sucroseShare: number;
  /** Dry matter that yeast can't use [g/L]. */
  readonly unfermentableGPerL: number;
  readonly nitrogenMgPerL: number;
  /** Cells put in [g/L]. */
  readonly pitchGPerL: number;
  readonly ethanolYieldGPerG: number;
  readonly glycerolYieldGPerG: number;
  /** Hours before cells grow. */
  readonly lagH: number;
  /** Sugar uptake of a gram of cells at 20 °C with plenty [g/(g h)]. */
  readonly uptakeGPerGH: number;
  /** Ethanol at which uptake ceases [g/L]. */
  readonly toleranceGPerL: number;
  /** Death at 20 °C without ethanol [1/h], and how much faster at 100 g/L. */
  readonly deathPerH: number;
  readonly deathByEthanol: number;
  readonly temperatureC: (timeH: number) => number;
  /** Cells that are killed at once, if any: share and time. */
  readonly shock: { readonly atH: number; readonly kills: number } | null;
}

/** Its true course at every half hour. */
export interface TrueFerment {
  readonly stepH: number;
  readonly gravity: Float64Array;
  readonly abv: Float64Array;
  /** Gas made [g/L of must]. */
  readonly gasGPerL: Float64Array;
  readonly temperatureC: Float64Array;
  /** Gravity that it would reach with all its sugar used. */
  readonly dryGravity: number;
}

const stepH = 0.5;
const waterKgPerM3 = 998.20123;
const ethanolGPerLPerAbv = 7.8924;
const carbonDioxidePerEthanol = 0.9553;

/** Integrates the ferment by Heun's rule. Source of the shape: Coleman, Fish, Block, Appl. Environ. Microbiol. 73 (2007) 5875. */
export function simulateFerment(setup: FermentSetup, hours: number): TrueFerment {
  const count = Math.round(hours / stepH) + 1;
  const make = () => new Float64Array(count);
  const course = { gravity: make(), abv: make(), gasGPerL: make(), temperatureC: make() };
  let [cells, sugar, nitrogen, ethanol] = [
    setup.pitchGPerL,
    setup.sugarGPerL,
    setup.nitrogenMgPerL,
    0,
  ];
  let shocked = false;
  for (let index = 0; index < count; index += 1) {
    const timeH = index * stepH;
    const temperatureC = setup.temperatureC(timeH);
    course.gravity[index] = gravityOf(setup, sugar, ethanol);
    course.abv[index] = abvOf(setup, sugar, ethanol);
    course.gasGPerL[index] = ethanol * carbonDioxidePerEthanol;
    course.temperatureC[index] = temperatureC;
    if (setup.shock !== null && !shocked && timeH >= setup.shock.atH) {
      cells *= 1 - setup.shock.kills;
      shocked = true;
    }
    const small = 10;
    for (let part = 0; part < small; part += 1) {
      const h = stepH / small;
      const warm = 2.1 ** ((Math.min(temperatureC, 34) - 20) / 10);
      const cold = temperatureC < 12 ? Math.max(0.05, (temperatureC - 4) / 8) : 1;
      const awake = 1 / (1 + Math.exp(-(timeH - setup.lagH) / 3));
      const growth = 0.16 * warm * cold * awake * (nitrogen / (nitrogen + 15)) * cells;
      const inhibited = Math.max(0, 1 - (ethanol / setup.toleranceGPerL) ** 1.6);
      const uptake =
        setup.uptakeGPerGH * warm * cold * awake * (sugar / (sugar + 9)) * inhibited * cells;
      const heat = temperatureC > 33 ? 1 + (temperatureC - 33) * 1.2 : 1;
      const death =
        setup.deathPerH *
        2.2 ** ((temperatureC - 20) / 10) *
        heat *
        (1 + setup.deathByEthanol * (ethanol / 100) ** 2) *
        cells;
      cells += (growth * inhibited - death) * h;
      nitrogen = Math.max(0, nitrogen - 35 * growth * h);
      const taken = Math.min(sugar, uptake * h);
      sugar -= taken;
      ethanol += setup.ethanolYieldGPerG * taken;
    }
  }
  const whole = setup.sugarGPerL * setup.ethanolYieldGPerG;
  return { stepH, ...course, dryGravity: gravityOf(setup, 0, whole) };
}

/** Grams in what has become of a litre of must. */
function massG(setup: FermentSetup, ethanol: number): number {
  const began =
    1000 + 0.38 * ((1 - 0.05 * setup.sucroseShare) * setup.sugarGPerL + setup.unfermentableGPerL);
  return began - carbonDioxidePerEthanol * ethanol;
}

function gravityOf(setup: FermentSetup, sugar: number, ethanol: number): number {
  const taken = setup.sugarGPerL - sugar;
  const solids =
    sugar * (1 - 0.05 * setup.sucroseShare) +
    setup.unfermentableGPerL +
    setup.glycerolYieldGPerG * 0.6 * taken;
  const fraction = ethanol / (massG(setup, ethanol) - 0.02 * taken);
  const dry = densityKgPerM3({ ethanolMassFraction: fraction, temperatureC: 20 }) / waterKgPerM3;
  return dry + 0.0003855 * solids;
}

function abvOf(setup: FermentSetup, sugar: number, ethanol: number): number {
  const mass = massG(setup, ethanol) - 0.02 * (setup.sugarGPerL - sugar);
  const volumeL = mass / 998.2 / gravityOf(setup, sugar, ethanol);
  return ethanol / volumeL / ethanolGPerLPerAbv;
}
