import type { Action } from './action.ts';

/** The job's sheet on paper, as it stands. */
export const jobPrint: Action = {
  name: 'job-print',
  label: () => 'Print the sheet',
  when: ({ job }) => job !== undefined,
  perform: () => window.print(),
};
