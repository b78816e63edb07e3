import type { Action } from './action.ts';

export const roadKeepDays: Action = {
  name: 'road-keep-days',
  label: () => 'Keep these days',
  when: ({ road }) => road?.laid !== undefined && road.laid.shift !== 0,
  perform: ({ road }) => road?.laid?.keep(),
};
