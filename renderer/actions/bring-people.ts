import type { Action } from './action.ts';

export const bringPeople: Action = {
  name: 'bring-people',
  label: () => 'Bring in a file of people',
  when: () => true,
  perform: (scene) => scene.go('/people/bring'),
};
