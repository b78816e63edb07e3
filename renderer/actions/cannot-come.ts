import type { Action } from './action.ts';

export const cannotCome: Action = {
  name: 'cannot-come',
  label: () => 'I cannot come',
  when: () => true,
  perform: (scene) => scene.go('/cannot-come'),
};
