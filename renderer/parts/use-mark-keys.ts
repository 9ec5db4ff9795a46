import { useEffect, useRef } from 'react';

interface KeyAct {
  readonly key: string;
  readonly run: () => void;
}

/** Letters act only while nobody types and no dialog is open; they can be switched off (WCAG 2.1.4). */
export function useMarkKeys(acts: readonly KeyAct[]): void {
  const current = useRef(acts);
  current.current = acts;
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.metaKey || event.altKey || event.repeat) return;
      // A space on a button presses that button.
      if (event.key === ' ' && event.target instanceof HTMLButtonElement) return;
      if (isTyping(event.target) || document.querySelector('dialog[open]')) return;
      const act = current.current.find(({ key }) => key === event.key.toLowerCase());
      if (!act) return;
      event.preventDefault();
      act.run();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, []);
}

function isTyping(target: EventTarget | null): boolean {
  if (!(target instanceof HTMLElement)) return false;
  if (target instanceof HTMLInputElement)
    return target.type !== 'radio' && target.type !== 'checkbox';
  return target instanceof HTMLTextAreaElement || target instanceof HTMLSelectElement;
}
