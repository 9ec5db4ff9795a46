import { type fruitSugars, say } from '#shared-core';

/** The fruits of the table by what people call them. */
export const fruitNames: Readonly<Record<(typeof fruitSugars)[number]['fruit'], string>> = {
  apple: say('apple'),
  apricot: say('apricot'),
  blackberry: say('blackberry'),
  cherry: say('cherry'),
  cranberry: say('cranberry'),
  grape: say('grape'),
  grapefruit: say('grapefruit'),
};
