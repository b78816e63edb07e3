import { client } from '../door.ts';
import { deed, say } from '../deeds.ts';
import { copyText } from '../parts/copy.ts';
import type { Action } from './action.ts';

/** Copies the reply of the newest version and notes that it is sent. */
export const copyReply: Action = {
  name: 'copy-reply',
  label: () => 'Copy the reply',
  when: ({ version }) => version !== undefined,
  perform: ({ version }) =>
    deed(async () => {
      if (!version) return;
      if (!(await copyText(version.reply.text))) {
        say('The clipboard refused. Mark the reply and copy it by hand.');
        return;
      }
      await client.quotes.sent({ id: version.id });
      say('Copied. Paste it into your mail and put the PDF with it.');
    }),
};
