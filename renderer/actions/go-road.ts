import type { Action } from './action.ts';

export const goRoad: Action = {
  name: 'go-road',
  label: () => 'Go to Road',
  shortcut: 'Alt+2',
  when: () => true,
  perform: (scene) => scene.go('/road'),
};
