import type { ReactNode } from 'react';
import { troubleOf } from '../trouble.ts';
import { TroubleNote } from './trouble-note.tsx';

/** Shows what was asked for once it is there, or why it is not. */
export function Asked<T>({ asked, children }: { asked: { data: T | undefined; error: unknown }; children: (data: T) => ReactNode }) {
  if (asked.data !== undefined) return <>{children(asked.data)}</>;
  return asked.error ? <TroubleNote trouble={troubleOf(asked.error)} /> : null;
}
