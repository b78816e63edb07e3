import type { Action } from './action.ts';

export const newThing: Action = {
  name: 'new-thing',
  label: () => 'New thing',
  when: () => true,
  perform: (scene) => scene.go('/kit/new'),
};
