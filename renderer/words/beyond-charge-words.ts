import { say } from '#shared-core';

/** What to do about an amount that is more than went into the pot. It is kept if the person insists: the charge may be what is wrong. */
export function beyondChargeWords(chargeMl: number, unit: string): string {
  return say(
    'More than the {charge} mL that went into the pot. Look at the number of {unit} again; if it is right, press once more and correct the charge later: until then the balance leaves it out.',
    { charge: chargeMl, unit },
  );
}
