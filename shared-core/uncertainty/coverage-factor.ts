/** Standard uncertainties on either side of a normal value that hold 95 % (JCGM 100, table G.1). */
export const coverageFactor95 = 1.96;
/** And 90 %, from the same table. */
export const coverageFactor90 = 1.645;
