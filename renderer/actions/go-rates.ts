import type { Action } from './action.ts';

export const goRates: Action = {
  name: 'go-rates',
  label: () => 'Go to Rates',
  shortcut: 'Alt+6',
  when: () => true,
  perform: (scene) => scene.go('/rates'),
};
