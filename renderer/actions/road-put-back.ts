import type { Action } from './action.ts';

export const roadPutBack: Action = {
  name: 'road-put-back',
  label: () => 'Put back',
  when: ({ road }) => road?.laid !== undefined && road.laid.shift !== 0,
  perform: ({ road }) => road?.laid?.putBack(),
};
