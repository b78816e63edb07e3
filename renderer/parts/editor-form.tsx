import { useEffect, useRef, type ReactNode } from 'react';

/** A small form that opens in place: its first input has the focus, Enter keeps, Escape leaves. */
export function EditorForm(props: {
  label: string;
  className: string | undefined;
  onKeep: () => void;
  onLeave: () => void;
  children: ReactNode;
}) {
  const form = useRef<HTMLFormElement>(null);
  const { onLeave } = props;
  useEffect(() => form.current?.querySelector<HTMLElement>('input, textarea, button')?.focus(), []);
  useEffect(() => {
    const element = form.current;
    const onKey = (event: KeyboardEvent): void => {
      if (event.key === 'Escape') onLeave();
    };
    element?.addEventListener('keydown', onKey);
    return () => element?.removeEventListener('keydown', onKey);
  }, [onLeave]);
  return (
    <form
      ref={form}
      className={props.className}
      aria-label={props.label}
      onSubmit={(event) => {
        event.preventDefault();
        props.onKeep();
      }}
    >
      {props.children}
    </form>
  );
}
