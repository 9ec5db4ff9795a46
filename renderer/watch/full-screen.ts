/** Where full screen is not allowed, a view that covers the window goes on doing so. */
export function fullScreenIfAllowed(): void {
  document.documentElement.requestFullscreen?.().catch(() => {});
}
