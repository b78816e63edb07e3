import type { Action } from './action.ts';

export const roadWider: Action = {
  name: 'road-wider',
  label: () => 'Look wider',
  shortcut: '-',
  when: ({ road }) => road !== undefined,
  perform: ({ road }) => road?.zoom(1),
};
