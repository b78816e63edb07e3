import type { Action } from './action.ts';

/** One page with what is shown. */
export const roadPrint: Action = {
  name: 'road-print',
  label: () => 'Print',
  when: ({ road }) => road !== undefined,
  perform: () => window.print(),
};
