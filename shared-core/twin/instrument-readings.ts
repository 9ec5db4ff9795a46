/** A measuring cylinder is read to half a millilitre, and a balance tells no more of what has come over [mL]. */
export const receiverSdMl = 0.5;
/** A balance is read as often as a busy person would: its errors do not average out any faster [s]. */
export const receiverEveryS = 240;
/** How well a probe in the pot shows its temperature [K]. */
export const potSdK = 0.4;
/** By how much a column's head lies off the twin's for the whole of a run [K]: by simulation a third of a kelvin where it holds little, up to one on beads and rings. */
export const heightModelSdK = 0.5;
