import { type BatchColumn, type ColumnFlows, fillColumn, stepColumn } from './batch-column.ts';
import { chargeAmounts } from './charge-amounts.ts';
import { type EquilibriumTables, equilibriumTables, readTable } from './equilibrium-tables.ts';
import type { StillGuess } from './still-guess.ts';

/** How a run goes on from the first vapour at the head, for one guess of the still. */
export interface BatchCourse {
  /** Number of valid entries in the arrays. */
  count: number;
  /** Time between entries, of boiling at steady heat [s]. */
  stepS: number;
  /** Flow once only water comes, at the same heat [mL/s]. */
  waterMlPerS: number;
  /** Dew temperature of the vapour at the head above the azeotrope [K]. */
  readonly headHeightK: Float64Array;
  /** Boiling temperature of the pot above the azeotrope [K]. */
  readonly potHeightK: Float64Array;
  readonly distillateMl: Float64Array;
  readonly headMoleFraction: Float64Array;
  readonly potMoleFraction: Float64Array;
  readonly potMl: Float64Array;
}

const capacity = 160;

const columns = [
  'headHeightK',
  'potHeightK',
  'distillateMl',
  'headMoleFraction',
  'potMoleFraction',
  'potMl',
] as const;

/** A course of no points yet, for `runCourse` to fill: it is used again and again. */
export function emptyCourse(): BatchCourse {
  // Parts of one array: a cloud has hundreds of courses, and each array of its own is a piece of memory to ask for and give back.
  const room = new Float64Array(columns.length * capacity);
  let taken = 0;
  const array = (): Float64Array => {
    taken += capacity;
    return room.subarray(taken - capacity, taken);
  };
  return {
    count: 0,
    stepS: 1,
    waterMlPerS: 0,
    headHeightK: array(),
    potHeightK: array(),
    distillateMl: array(),
    headMoleFraction: array(),
    potMoleFraction: array(),
    potMl: array(),
  };
}

/** Makes one course the same as another. */
export function copyCourse(from: BatchCourse, into: BatchCourse): void {
  into.count = from.count;
  into.stepS = from.stepS;
  into.waterMlPerS = from.waterMlPerS;
  for (const column of columns) into[column].set(from[column].subarray(0, from.count));
}

/** Room is some 20 °C and the azeotrope some 76 °C: the column's loss is reckoned from here [K]. */
const azeotropeAboveRoomK = 56;
const leastDistillateShare = 0.03;
/** Boiling water stands so far above the azeotrope [K]; molar volume of water [mL/mol]. */
const waterHeightK = 22;
const waterMlPerMol = 18.1;
/** Beyond the end of a course the flow goes over to that of water within this time (63 %) [s]; by simulation. */
const toWaterS = 1800;
/** Steps until all ethanol would have come over at the first flow: longer than any main fraction lasts. */
const stepsToExhaustion = 80;

/** A course on its way: what nobody asks for is not run. All share one column, so only the one begun last can go on. */
export interface CourseRun {
  readonly course: BatchCourse;
  readonly column: BatchColumn;
  /** Those of the step under way: one object for all, since a run of the monitor takes some hundred thousand steps. */
  readonly flows: ColumnFlows;
  /** Vapour that leaves the pot [mol/s], and how the reflux splits it while the column stands as at first. */
  readonly vapourMolPerS: number;
  readonly lossReflux: number;
  readonly taken: number;
  readonly chargedMol: number;
  readonly untilHeadHeightK: number;
  lossPerK: number;
  distillateMl: number;
  isOver: boolean;
}

/**
 * A batch column of N plates with hold-up h at constant molar overflow over a pot of M moles,
 * `h dx_i/dt = V (y_(i−1) − y_i) + L (x_(i+1) − x_i)`, `d(M x)/dt = L x_1 − V y_0`, `dM/dt = L − V`; a fraction of a plate
 * is the top one with that Murphree efficiency. The distillate is `D = (1 − r)(V − loss)`, where the loss is that of
 * the plates at their own temperatures and a share r is led back. Implicit in time and linearized per step, so steps of a
 * minute stay stable, and the fluxes of one plate are those of its neighbours: ethanol is conserved to rounding.
 *
 * It ends where the head stands `untilHeadHeightK` above the azeotrope: what follows is not asked for.
 * Left out: heat in the glass, vapour hold-up. How far that goes is measured by the ensemble.
 */
export function beginCourse(
  guess: StillGuess,
  chargeMl: number,
  untilHeadHeightK: number,
  into: BatchCourse,
): CourseRun {
  const perMl = chargeAmounts(guess.strengthAbv);
  const vapour = guess.vapourMolPerS;
  const chargedMol = chargeMl * (perMl.ethanolMol + perMl.waterMol);
  const lossReflux = (guess.refluxRatio * guess.lossShare) / (1 + guess.refluxRatio);
  const taken = 1 / ((1 + guess.refluxRatio) * (1 - lossReflux));
  const exhaustedS = (chargeMl * perMl.ethanolMol * (1 + guess.refluxRatio)) / (0.75 * vapour);
  const flows: ColumnFlows = {
    vapourMol: vapour,
    lostMol: vapour * lossReflux,
    distillateMol: vapour / (1 + guess.refluxRatio),
  };
  const chargedEthanolMol = chargeMl * perMl.ethanolMol;
  const column = fillColumn(guess, chargedMol, chargedEthanolMol, flows, equilibriumTables());
  into.stepS = exhaustedS / stepsToExhaustion;
  into.count = 0;
  return {
    course: into,
    column,
    flows,
    vapourMolPerS: vapour,
    lossReflux,
    taken,
    chargedMol,
    untilHeadHeightK,
    lossPerK: 0,
    distillateMl: 0,
    isOver: false,
  };
}

/** Runs on until the course can be read at a time along it [s], or ends. */
export function runTo(run: CourseRun, courseS: number): void {
  const { course } = run;
  // One entry more than are read between, for the rounding of times.
  const enough = courseS / course.stepS + 3;
  while (!run.isOver && !(course.count >= enough)) noteAndStep(run, equilibriumTables());
}

/** The whole course of a guess. */
export function runCourse(
  guess: StillGuess,
  chargeMl: number,
  untilHeadHeightK: number,
  into: BatchCourse,
): void {
  runTo(beginCourse(guess, chargeMl, untilHeadHeightK, into), Number.POSITIVE_INFINITY);
}

/** Notes how the column stands and, where the course goes on, lets one step pass. */
function noteAndStep(run: CourseRun, curve: EquilibriumTables): void {
  const { course, column, flows, vapourMolPerS, taken } = run;
  const potX = column.x[0] as number;
  const headHeight = readTable(curve, curve.dewHeightK, column.topY);
  const potHeight = readTable(curve, curve.boilingHeightK, potX);
  record(course, headHeight, potHeight, run.distillateMl, column, curve);
  run.isOver =
    (course.count > 2 && headHeight > run.untilHeadHeightK) ||
    potX < 2e-4 ||
    column.potMol < 0.05 * run.chargedMol ||
    course.count === capacity;
  if (run.isOver) return;
  const aboveRoomK = azeotropeAboveRoomK + columnHeightK(column, curve);
  if (course.count === 1) {
    run.lossPerK = run.lossReflux / aboveRoomK;
    const waterLoss = run.lossPerK * (azeotropeAboveRoomK + waterHeightK);
    const waterShare = Math.max(leastDistillateShare, taken * (1 - waterLoss));
    course.waterMlPerS = vapourMolPerS * waterShare * waterMlPerMol;
  }
  const lossShare = run.lossPerK * aboveRoomK;
  const share = Math.max(leastDistillateShare, taken * (1 - lossShare));
  flows.vapourMol = vapourMolPerS * course.stepS;
  flows.distillateMol = flows.vapourMol * share;
  flows.lostMol = flows.vapourMol * Math.min(1 - share, lossShare);
  stepColumn(column, flows, curve);
  run.distillateMl += flows.distillateMol * readTable(curve, curve.molarVolumeMl, column.topY);
}

/** Mean boiling temperature on the plates above the azeotrope [K]: what the column's loss grows with. */
function columnHeightK({ x, plates }: BatchColumn, curve: EquilibriumTables): number {
  let sum = 0;
  for (let plate = 1; plate <= plates; plate += 1) {
    sum += readTable(curve, curve.boilingHeightK, x[plate] as number);
  }
  return sum / plates;
}

function record(
  into: BatchCourse,
  headHeight: number,
  potHeight: number,
  distillateMl: number,
  column: BatchColumn,
  curve: EquilibriumTables,
): void {
  const at = into.count;
  const potX = column.x[0] as number;
  into.headHeightK[at] = headHeight;
  into.potHeightK[at] = potHeight;
  into.distillateMl[at] = distillateMl;
  into.headMoleFraction[at] = column.topY;
  into.potMoleFraction[at] = potX;
  into.potMl[at] = column.potMol * readTable(curve, curve.molarVolumeMl, potX);
  into.count = at + 1;
}

/** Distillate that has come by a time of boiling [mL]; beyond the course's end the tail runs on, weaker and slower. */
export function distillateAt(course: BatchCourse, boiledS: number): number {
  const last = course.count - 1;
  const pastS = boiledS - last * course.stepS;
  if (last < 1 || pastS <= 0) return courseAt(course, course.distillateMl, boiledS);
  const end = course.distillateMl[last] as number;
  const before = course.distillateMl[last - 1] as number;
  const faster = Math.max(0, (end - before) / course.stepS - course.waterMlPerS);
  return end + course.waterMlPerS * pastS - faster * toWaterS * Math.expm1(-pastS / toWaterS);
}

/** Flow along the course [mL/s], at the heat of the first vapour. */
export function flowAt({ distillateMl, stepS, count }: BatchCourse, courseS: number): number {
  const last = count - 1;
  if (last < 1) return 0;
  const cell = Math.max(0, Math.min(last - 1, Math.floor(courseS / stepS)));
  return ((distillateMl[cell + 1] as number) - (distillateMl[cell] as number)) / stepS;
}

/** Reads one of the course's arrays at a time of boiling; beyond its end the last slope goes on. */
export function courseAt(course: BatchCourse, values: Float64Array, boiledS: number): number {
  const last = course.count - 1;
  if (last < 1) return values[0] as number;
  const position = Math.max(0, boiledS / course.stepS);
  const cell = Math.min(last - 1, Math.floor(position));
  const low = values[cell] as number;
  return low + (position - cell) * ((values[cell + 1] as number) - low);
}
