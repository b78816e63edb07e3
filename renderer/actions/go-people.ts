import type { Action } from './action.ts';

export const goPeople: Action = {
  name: 'go-people',
  label: () => 'Go to People',
  shortcut: 'Alt+4',
  when: () => true,
  perform: (scene) => scene.go('/people'),
};
