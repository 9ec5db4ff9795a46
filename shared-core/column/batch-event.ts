/** Something a person does to the rig, or that happens to it. */
export type BatchAction =
  /** Heater on; at the rig's usual setting when no power is given [W]. */
  | { readonly kind: 'heat-on'; readonly powerW?: number }
  /** Heater turned down (or up) to this power [W]. */
  | { readonly kind: 'heat-eased'; readonly powerW: number }
  | { readonly kind: 'heat-off' }
  /** Heater taken away from the flask, still hot. */
  | { readonly kind: 'heat-removed' }
  | { readonly kind: 'heat-returned' }
  /** Share of the condensate led back to the top plate, 0 … 1. */
  | { readonly kind: 'reflux-set'; readonly returnedFraction: number }
  /** Column and head lose `lossFactor` (0 … 10) times the heat for `durationS` (0 … 86 400). */
  | { readonly kind: 'draught'; readonly durationS: number; readonly lossFactor: number }
  /** The pot bumps: boil-up held back by `depth` (0 … 1), then set free, every `periodS` (2 … 600), for `durationS` (0 … 86 400). */
  | {
      readonly kind: 'surging';
      readonly durationS: number;
      readonly depth: number;
      readonly periodS: number;
    }
  | { readonly kind: 'receiver-changed' };

/** An action at a time since the run began [s]. */
export type BatchEvent = BatchAction & { readonly timeS: number };
