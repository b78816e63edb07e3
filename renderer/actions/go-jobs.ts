import type { Action } from './action.ts';

export const goJobs: Action = {
  name: 'go-jobs',
  label: () => 'Go to Jobs',
  shortcut: 'Alt+3',
  when: () => true,
  perform: (scene) => scene.go('/jobs'),
};
