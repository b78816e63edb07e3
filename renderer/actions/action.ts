import type { Scene } from '../scene.ts';

/** Keys as they are written on the screen: "/", "Alt+1", "Ctrl+Enter". */
export type Shortcut = string;

/** True for a shortcut that is one character without Ctrl or Alt, which a person may switch off. */
export const isSingleKey = (shortcut: Shortcut): boolean => shortcut.length === 1;

/** Something that can be done: the one place where its words, its keys and its doing stand. Buttons, the find box and the keyboard read it. */
export type Action = {
  name: string;
  /** The words on its button, which may depend on what is on the screen. */
  label: (scene: Scene) => string;
  shortcut?: Shortcut;
  /** True where a text field has the same keys for itself. */
  outsideFields?: boolean;
  /** Whether it is offered now. */
  when: (scene: Scene) => boolean;
  /** Does it; what writes goes through `deed`. */
  perform: (scene: Scene) => void | Promise<unknown>;
};

/** True when a key press is the shortcut's. Meta counts as Ctrl, as on a Mac. */
export function pressed(shortcut: Shortcut, event: Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'altKey'>): boolean {
  const keys = shortcut === '+' ? ['+'] : shortcut.split('+');
  const key = keys.at(-1) ?? '';
  return (
    event.key.toLowerCase() === key.toLowerCase() &&
    (event.ctrlKey || event.metaKey) === keys.includes('Ctrl') &&
    event.altKey === keys.includes('Alt')
  );
}
