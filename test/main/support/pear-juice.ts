/** What is stated of a ferment whose sugar nobody knows. */
export const pearJuice = {
  name: 'Pear juice',
  beganAtIso: '2025-03-13T09:00:00.000Z',
  volumeMl: 1000,
  sugarG: null,
  wentIn: '',
};
