import type { Action } from './action.ts';

export const newHand: Action = {
  name: 'new-hand',
  label: () => 'New hand',
  when: () => true,
  perform: (scene) => scene.go('/people/new-hand'),
};
