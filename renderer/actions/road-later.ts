import type { Action } from './action.ts';

export const roadLater: Action = {
  name: 'road-later',
  label: () => 'Later',
  shortcut: 'ArrowRight',
  when: ({ road }) => road !== undefined,
  perform: ({ road }) => road?.move(1),
};
