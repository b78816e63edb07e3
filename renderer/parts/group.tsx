import type { ReactNode } from 'react';
import style from './sheet.module.css';

/** One part of a sheet: its name at the left, its fields at the right. */
export function Group({ title, children }: { title: string; children: ReactNode }) {
  return (
    <section className={style.group}>
      <h2>{title}</h2>
      <div className={style.inside}>{children}</div>
    </section>
  );
}
