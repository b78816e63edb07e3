import type { ReactNode } from 'react';
import style from './empty.module.css';

/** A place with nothing to show yet: its name, and what to do first. */
export function Empty({ title, children }: { title: string; children: ReactNode }) {
  return (
    <div className={style.empty}>
      <h1 className={style.title}>{title}</h1>
      <div>{children}</div>
    </div>
  );
}
