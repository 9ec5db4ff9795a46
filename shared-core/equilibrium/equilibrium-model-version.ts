/**
 * Names the equilibrium model in run logs and reports. It changes whenever any number from this
 * folder may change: curves, NRTL parameters or the model's own uncertainty.
 */
export const equilibriumModelVersion = 'ethanol-water-nrtl-1';
