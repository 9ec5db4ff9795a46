/** Lets asynchronous acts begin only when the ones before have ended, whether they failed or not. */
export function takeTurns(): <T>(act: () => Promise<T>) => Promise<T> {
  let lastTurn: Promise<unknown> = Promise.resolve();
  return (act) => {
    const turn = lastTurn.then(act);
    lastTurn = turn.catch(() => undefined);
    return turn;
  };
}
