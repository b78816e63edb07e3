import type { Action } from './action.ts';

export const newClient: Action = {
  name: 'new-client',
  label: () => 'New client',
  when: () => true,
  perform: (scene) => scene.go('/people/new-client'),
};
