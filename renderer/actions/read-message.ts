import { client } from '../door.ts';
import { deed } from '../deeds.ts';
import type { Action } from './action.ts';

/** Reads the pasted message, puts it on the books as an inquiry and opens its answer. */
export const readMessage: Action = {
  name: 'read-message',
  label: () => 'Read it',
  shortcut: 'Ctrl+Enter',
  when: (scene) => scene.message.trim() !== '',
  perform: (scene) =>
    deed(async () => {
      const taken = await client.inquiries.take({ text: scene.message, key: crypto.randomUUID() });
      scene.go(`/jobs/${taken.jobId}`);
    }),
};
