import { takeBack } from '../drafts.ts';
import type { Action } from './action.ts';

/** Takes back the last change that was made to the quote by hand; again for the one before. */
export const undoQuote: Action = {
  name: 'undo-quote',
  label: () => 'Take back the last change',
  shortcut: 'Ctrl+Z',
  outsideFields: true,
  when: ({ job, draft }) =>
    job !== undefined && !['let go', 'declined', 'cancelled', 'inked'].includes(job.state) && (draft?.undoable ?? 0) > 0,
  perform: ({ draft }) => draft && takeBack(draft),
};
