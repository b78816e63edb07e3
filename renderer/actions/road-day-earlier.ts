import type { Action } from './action.ts';

export const roadDayEarlier: Action = {
  name: 'road-day-earlier',
  label: () => 'A day earlier',
  shortcut: 'Alt+ArrowLeft',
  when: ({ road }) => road?.laid !== undefined,
  perform: ({ road }) => road?.laid?.move(-1),
};
