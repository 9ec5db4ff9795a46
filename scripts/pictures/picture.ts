/** A picture of the window, by the name of its file. */
export interface Picture {
  readonly name: string;
  readonly viewport: keyof typeof viewports;
  readonly colours: 'light' | 'dark';
}

export const viewports = {
  projector: { width: 1280, height: 720 },
  phone: { width: 390, height: 844 },
} as const;

/** A README is read over slow lines too. */
export const largestPictureBytes = 150 * 1024;
