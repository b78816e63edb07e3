import { useSyncExternalStore } from 'react';

function subscribe(listener: () => void): () => void {
  window.addEventListener('resize', listener);
  return () => window.removeEventListener('resize', listener);
}

/** Height of the window in CSS pixels. */
export const useWindowHeight = (): number => useSyncExternalStore(subscribe, () => window.innerHeight);
