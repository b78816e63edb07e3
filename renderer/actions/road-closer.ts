import type { Action } from './action.ts';

export const roadCloser: Action = {
  name: 'road-closer',
  label: () => 'Look closer',
  shortcut: '+',
  when: ({ road }) => road !== undefined,
  perform: ({ road }) => road?.zoom(-1),
};
