/** Gathers acts and carries them out together, in order, when `due` calls back. */
export function gatherUntil(due: (carryOut: () => void) => void): (act: () => void) => void {
  let gathered: (() => void)[] = [];
  const carryOut = () => {
    const acts = gathered;
    gathered = [];
    for (const act of acts) act();
  };
  return (act) => {
    gathered.push(act);
    if (gathered.length === 1) due(carryOut);
  };
}
