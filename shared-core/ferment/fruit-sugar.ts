/** A fruit with the sugar that tables give for it. */
export interface FruitSugar {
  readonly fruit: string;
  /** Sugar in 100 g that can be eaten [g]. */
  readonly lowPercent: number;
  readonly highPercent: number;
}

/**
 * Sugar in fruit, as ranges: the range is the message. Source: plantanswers.com/publications/nutrition/fruits.html (table of ranges).
 * For pears no range was found in a source: measure the juice.
 */
export const fruitSugars = [
  { fruit: 'apple', lowPercent: 5.7, highPercent: 16.1 },
  { fruit: 'apricot', lowPercent: 6.7, highPercent: 10.4 },
  { fruit: 'blackberry', lowPercent: 6.1, highPercent: 6.4 },
  { fruit: 'cherry', lowPercent: 9.5, highPercent: 11.9 },
  { fruit: 'cranberry', lowPercent: 2.2, highPercent: 4.2 },
  { fruit: 'grape', lowPercent: 11.5, highPercent: 17.6 },
  { fruit: 'grapefruit', lowPercent: 4.7, highPercent: 7.0 },
] as const satisfies readonly FruitSugar[];
