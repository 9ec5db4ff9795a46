import { type RefObject, useLayoutEffect, useRef, useState } from 'react';

export interface BoxSize {
  readonly width: number;
  readonly height: number;
}

/** The size of an element in whole CSS pixels; null until it is laid out. */
export function useBoxSize<E extends HTMLElement>(): readonly [
  RefObject<E | null>,
  BoxSize | null,
] {
  const box = useRef<E>(null);
  const [size, setSize] = useState<BoxSize | null>(null);
  useLayoutEffect(() => {
    const element = box.current;
    if (!element) return;
    const measure = () => {
      const width = Math.floor(element.clientWidth);
      const height = Math.floor(element.clientHeight);
      setSize((known) =>
        known?.width === width && known.height === height ? known : { width, height },
      );
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return [box, size];
}
