import type { Action } from './action.ts';

export const newPreset: Action = {
  name: 'new-preset',
  label: () => 'New preset',
  when: () => true,
  perform: (scene) => scene.go('/kit/new-preset'),
};
