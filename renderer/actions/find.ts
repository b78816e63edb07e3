import type { Action } from './action.ts';

/** Id of the find box's input; the box itself stands in the foot rule. */
export const FIND_BOX = 'find-box';

export const find: Action = {
  name: 'find',
  label: () => 'Find',
  shortcut: '/',
  when: () => true,
  perform: () => document.getElementById(FIND_BOX)?.focus(),
};
