import type { Action } from './action.ts';

export const roadEarlier: Action = {
  name: 'road-earlier',
  label: () => 'Earlier',
  shortcut: 'ArrowLeft',
  when: ({ road }) => road !== undefined,
  perform: ({ road }) => road?.move(-1),
};
