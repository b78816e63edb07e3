import type { Action } from '../actions/action.ts';
import { useDeeds } from '../deeds.ts';
import { sceneNow, useScene } from '../scene.ts';
import { Button } from './button.tsx';

/** The button of an action: its words, whether it can be pressed and what it does come from the action. */
export function ActionButton({ action, kind = 'plain' }: { action: Action; kind?: 'plain' | 'black' | 'quiet' }) {
  const scene = useScene();
  const { running } = useDeeds();
  return (
    <Button
      kind={kind}
      isDisabled={running > 0 || !action.when(scene)}
      onPress={() => void action.perform(sceneNow())}
      {...(action.shortcut ? { 'aria-keyshortcuts': ariaKeys(action.shortcut) } : {})}
    >
      {action.label(scene)}
    </Button>
  );
}

const ariaKeys = (shortcut: string): string => shortcut.replace('Ctrl', 'Control');
