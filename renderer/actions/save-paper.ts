import { deed } from '../deeds.ts';
import { savePaper as save } from '../parts/paper-file.ts';
import type { Action } from './action.ts';

/** Saves the PDF of the newest version where the person keeps files. */
export const savePaper: Action = {
  name: 'save-paper',
  label: () => 'Save the PDF',
  when: ({ version }) => version !== undefined,
  perform: ({ version }) => version && deed(() => save(version.paper.id)),
};
