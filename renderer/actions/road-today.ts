import type { Action } from './action.ts';

export const roadToday: Action = {
  name: 'road-today',
  label: () => 'Today',
  shortcut: 'Home',
  when: ({ road }) => road !== undefined && !road.atToday,
  perform: ({ road }) => road?.toToday(),
};
