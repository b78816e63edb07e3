import type { Action } from './action.ts';

export const goKit: Action = {
  name: 'go-kit',
  label: () => 'Go to Kit',
  shortcut: 'Alt+5',
  when: () => true,
  perform: (scene) => scene.go('/kit'),
};
