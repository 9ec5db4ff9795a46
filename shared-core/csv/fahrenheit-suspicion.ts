import { worded } from '../wording/index.ts';

/** Notices head temperatures without a unit that can only be degrees Fahrenheit. */
export interface FahrenheitSuspicion {
  /** Takes a value that neither its title nor its cell gives a unit. */
  see(value: number): void;
  remark(): string | null;
}

/** Ethanol–water vapour in °F: 78 to 100 °C are 172 to 212 °F; thin air and slips of the probe allowed for. */
const [lowest, highest] = [150, 215] as const;
const leastShare = 0.1;
const leastCount = 3;
/** Some values of a broken probe may lie above. */
const mostAboveShare = 0.02;

/** Suspects when a tenth of the values lie where a head settles in °F, and hardly any above. */
export function createFahrenheitSuspicion(): FahrenheitSuspicion {
  let count = 0;
  let within = 0;
  let above = 0;
  return {
    see: (value) => {
      count += 1;
      if (value > highest) above += 1;
      else if (value >= lowest) within += 1;
    },
    remark: () =>
      within >= leastCount && within >= leastShare * count && above <= mostAboveShare * count
        ? worded(
            'The head temperatures have no unit and were read as °C, but they look like °F: name the unit in the title, as in "head (°F)".',
          )
        : null,
  };
}
