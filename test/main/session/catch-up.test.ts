import { describe, expect, test } from 'vitest';
import { createCatchUp } from '../../../main/session/catch-up.ts';
import { createManualTime } from '../support/manual-time.ts';

function catchingUp() {
  const { scheduler, pass } = createManualTime();
  const heard = { upToS: 10, asked: 0 };
  const did: string[] = [];
  const catchUp = createCatchUp({
    scheduler,
    heardUpToS: () => {
      heard.asked += 1;
      return heard.upToS;
    },
  });
  const inTurn = (atS: number, what: string) => catchUp.after(atS, () => did.push(what));
  return { catchUp, inTurn, heard, did, pass };
}

describe('what a person does', () => {
  test('is done at once where nothing that was said before is on its way', () => {
    const { catchUp, inTurn, did } = catchingUp();
    inTurn(10, 'mark');
    expect([did, catchUp.waitingFor()]).toEqual([['mark'], []]);
  });

  test('waits for what was said before it, looking every fiftieth of a second, and keeps its order', async () => {
    const { catchUp, inTurn, heard, did, pass } = catchingUp();
    inTurn(11, 'first');
    inTurn(12, 'second');
    // Said to have come by now, yet nothing overtakes what waits.
    inTurn(9, 'third');
    expect([did, catchUp.waitingFor()]).toEqual([[], [11, 12, 9]]);
    heard.upToS = 11;
    expect(did).toEqual([]);
    await pass(0.021);
    expect([did, catchUp.waitingFor()]).toEqual([['first'], [12, 9]]);
    heard.upToS = 12;
    await pass(0.02);
    expect([did, catchUp.waitingFor()]).toEqual([['first', 'second', 'third'], []]);
    const { asked } = heard;
    await pass(1);
    expect(heard.asked).toBe(asked);
  });

  test('waits for twenty-five looks and no longer, counted from when it was asked', async () => {
    const { inTurn, did, pass } = catchingUp();
    inTurn(11, 'first');
    await pass(0.21);
    inTurn(12, 'second');
    await pass(0.28);
    expect(did).toEqual([]);
    await pass(0.02);
    expect(did).toEqual(['first']);
    await pass(0.18);
    expect(did).toEqual(['first']);
    await pass(0.02);
    expect(did).toEqual(['first', 'second']);
    inTurn(13, 'third');
    await pass(0.03);
    expect(did).toEqual(['first', 'second']);
  });

  test('has waited long enough once something newer has come, and no later thing with it', () => {
    const { catchUp, inTurn, did } = catchingUp();
    inTurn(11, 'first');
    inTurn(12, 'second');
    catchUp.actUpTo(10.9);
    expect(did).toEqual([]);
    catchUp.actUpTo(11);
    expect([did, catchUp.waitingFor()]).toEqual([['first'], [12]]);
    catchUp.actUpTo(20);
    expect([did, catchUp.waitingFor()]).toEqual([['first', 'second'], []]);
  });

  test('may ask for more while it is done', () => {
    const { catchUp, inTurn, did } = catchingUp();
    catchUp.after(11, () => {
      did.push('first');
      inTurn(12, 'asked by the first');
    });
    catchUp.actUpTo(11);
    expect([did, catchUp.waitingFor()]).toEqual([['first'], [12]]);
    catchUp.actUpTo(12);
    expect(did).toEqual(['first', 'asked by the first']);
  });
});
