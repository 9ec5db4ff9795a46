import { useMemo } from 'react';
import { axisTimeWords, clockWords, type MarkBody, saidWords, told } from '#shared-core';
import { usePreferences } from '../parts/index.ts';
import { markWords } from './mark-words.ts';
import { countWords, numberWords, quantityWords, rangeWords } from './number-words.ts';

/** Numbers, times and marks in the person's own way of writing them. */
export function useWords() {
  const decimal = usePreferences(({ decimal }) => decimal);
  return useMemo(
    () => ({
      number: (value: number, decimals: number) => numberWords(value, decimals, decimal),
      quantity: (value: number, decimals: number, unit: string) =>
        quantityWords(value, decimals, unit, decimal),
      range: (interval: { low: number; high: number }, decimals: number, unit: string) =>
        rangeWords(interval, decimals, unit, decimal),
      count: countWords,
      said: (sentence: string) => saidWords(told(sentence), decimal),
      mark: (mark: MarkBody) => markWords(mark, decimal),
      clock: clockWords,
      axisTime: axisTimeWords,
    }),
    [decimal],
  );
}
