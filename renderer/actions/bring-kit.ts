import type { Action } from './action.ts';

export const bringKit: Action = {
  name: 'bring-kit',
  label: () => 'Bring in a file of kit',
  when: () => true,
  perform: (scene) => scene.go('/kit/bring'),
};
