import { useState, type ReactNode } from 'react';
import style from './fold.module.css';

/** What not everybody needs, folded until it is asked for; given as a function it is not even made before. */
export function Fold({ title, children, open = false }: { title: ReactNode; children: ReactNode | (() => ReactNode); open?: boolean }) {
  const [shown, setShown] = useState(open);
  return (
    <details className={style.fold} open={open} onToggle={(event) => setShown(event.currentTarget.open)}>
      <summary className={style.title}>{title}</summary>
      <div className={style.inside}>{typeof children !== 'function' ? children : shown ? children() : null}</div>
    </details>
  );
}
