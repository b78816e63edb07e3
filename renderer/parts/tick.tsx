import type { ReactNode } from 'react';
import { Checkbox } from 'react-aria-components';
import style from './tick.module.css';

/** Something that is so or is not. */
export function Tick(props: { checked: boolean; onChange: (checked: boolean) => void; disabled?: boolean; children: ReactNode }) {
  return (
    <Checkbox className={style.tick ?? ''} isSelected={props.checked} onChange={props.onChange} isDisabled={props.disabled ?? false}>
      <span className={style.box} aria-hidden>
        <svg viewBox="0 0 12 12">
          <path d="M2 6.5 5 9.5 10 2.5" />
        </svg>
      </span>
      <span>{props.children}</span>
    </Checkbox>
  );
}
