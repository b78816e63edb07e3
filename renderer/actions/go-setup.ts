import type { Action } from './action.ts';

export const goSetup: Action = {
  name: 'go-setup',
  label: () => 'Go to Setup',
  shortcut: 'Alt+8',
  when: () => true,
  perform: (scene) => scene.go('/setup'),
};
