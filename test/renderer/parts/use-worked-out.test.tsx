// @vitest-environment happy-dom
import { cleanup, render, screen } from '@testing-library/react';
import { StrictMode } from 'react';
import { afterEach, expect, test } from 'vitest';
import { useWorkedOut } from '../../../renderer/parts/use-worked-out.ts';

afterEach(cleanup);

const happened: string[] = [];

const way = {
  makeWorker: () => {
    throw new Error('No worker may be started here.');
  },
  instead: (litres: number) => `${litres} L`,
  onArrival: (result: string) => void happened.push(`learned ${result}`),
  pauseMs: 0,
};

function Volume({ litres }: { readonly litres: number }) {
  const { result } = useWorkedOut(litres, way);
  if (result !== null && happened.at(-1) !== `drawn ${result}`) happened.push(`drawn ${result}`);
  return <p>{result}</p>;
}

test('what must be known of a result is known once, before it is drawn', async () => {
  const shown = render(<Volume litres={4} />, { wrapper: StrictMode });
  await screen.findByText('4 L');
  shown.rerender(<Volume litres={5} />);
  await screen.findByText('5 L');
  expect(happened).toEqual(['learned 4 L', 'drawn 4 L', 'learned 5 L', 'drawn 5 L']);
});
