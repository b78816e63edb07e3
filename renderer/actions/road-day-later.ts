import type { Action } from './action.ts';

export const roadDayLater: Action = {
  name: 'road-day-later',
  label: () => 'A day later',
  shortcut: 'Alt+ArrowRight',
  when: ({ road }) => road?.laid !== undefined,
  perform: ({ road }) => road?.laid?.move(1),
};
