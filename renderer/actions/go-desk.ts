import type { Action } from './action.ts';

export const goDesk: Action = {
  name: 'go-desk',
  label: () => 'Go to Desk',
  shortcut: 'Alt+1',
  when: () => true,
  perform: (scene) => scene.go('/'),
};
