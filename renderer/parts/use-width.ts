import { useCallback, useState, type RefCallback } from 'react';

/** The width of a box in CSS pixels, kept up to date; 0 until it is measured. */
export function useWidth(): [RefCallback<HTMLElement>, number] {
  const [width, setWidth] = useState(0);
  const box = useCallback((element: HTMLElement) => {
    const observer = new ResizeObserver(() => setWidth(element.clientWidth));
    observer.observe(element);
    setWidth(element.clientWidth);
    return () => observer.disconnect();
  }, []);
  return [box, width];
}
