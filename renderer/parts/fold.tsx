import type { ReactNode } from 'react';
import style from './fold.module.css';

/** What not everybody needs, folded until it is asked for. */
export function Fold({ title, children, open = false }: { title: ReactNode; children: ReactNode; open?: boolean }) {
  return (
    <details className={style.fold} open={open}>
      <summary className={style.title}>{title}</summary>
      <div className={style.inside}>{children}</div>
    </details>
  );
}
