/**
 * The azeotrope as tables give it, for questions that compare the model or a run with a table: 78.15 °C and
 * 0.8943 mol/mol at 101.325 kPa. Source: J. S. Carey and W. K. Lewis, Ind. Eng. Chem. 24 (1932) 882, as
 * tabulated in Perry's Chemical Engineers' Handbook, section 13.
 */
export const publishedAzeotrope = {
  pressureKPa: 101.325,
  temperatureC: 78.15,
  ethanolMoleFraction: 0.8943,
  cited: 'Carey and Lewis, Ind. Eng. Chem. 24 (1932) 882',
} as const;
