import { useEffect } from 'react';

/** Leaves a view for the whole room by Escape, in full screen and out of it. */
export function useClassroomKeys(onClose: () => void): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.key === 'Escape' && !document.querySelector('dialog[open]')) onClose();
    };
    // The browser takes Escape for itself in full screen and only tells the outcome.
    const onScreen = () => {
      if (!document.fullscreenElement) onClose();
    };
    window.addEventListener('keydown', onKey);
    document.addEventListener('fullscreenchange', onScreen);
    return () => {
      window.removeEventListener('keydown', onKey);
      document.removeEventListener('fullscreenchange', onScreen);
    };
  }, [onClose]);
}
