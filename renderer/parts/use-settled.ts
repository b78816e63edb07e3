import { useEffect, useState } from 'react';

/** A value once it has stood still for so many milliseconds, so that typing does not ask with every letter. */
export function useSettled<T>(value: T, after = 350): T {
  const [settled, setSettled] = useState(value);
  useEffect(() => {
    const wait = setTimeout(() => setSettled(value), after);
    return () => clearTimeout(wait);
  }, [value, after]);
  return settled;
}
