/** Lets the window draw and answer between slices of long work. */
export const breathe = () => new Promise<void>((resolve) => setTimeout(resolve, 0));
