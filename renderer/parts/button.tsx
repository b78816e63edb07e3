import { Button as AriaButton, type ButtonProps } from 'react-aria-components';
import style from './button.module.css';

/** A button. At most one on a screen is `black`: the thing to do next. `quiet` reads as words until it is pointed at. */
export function Button({ kind = 'plain', ...props }: Omit<ButtonProps, 'className' | 'style'> & { kind?: 'plain' | 'black' | 'quiet' }) {
  return <AriaButton {...props} className={`${style.button} ${style[kind]}`} data-black={kind === 'black' || undefined} />;
}
