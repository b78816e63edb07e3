import { useState } from 'react';

/**
 * Which of several forms is open, one at a time: what is open, how to open another, how the open one closes itself.
 * A form that ends late, after its save, does not close another that was opened meanwhile.
 */
export function useOneOpen<T>(begin: T | null = null): [T | null, (next: T) => void, () => void] {
  const [open, setOpen] = useState<T | null>(begin);
  return [open, setOpen, () => setOpen((now) => (now === open ? null : now))];
}
