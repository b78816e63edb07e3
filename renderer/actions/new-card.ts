import type { Action } from './action.ts';

export const newCard: Action = {
  name: 'new-card',
  label: () => 'New rate card',
  when: () => true,
  perform: (scene) => scene.go('/rates/new'),
};
