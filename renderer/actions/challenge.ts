import { client } from '../door.ts';
import { deed, say } from '../deeds.ts';
import { wallInWords } from '../../core/words/dates.ts';
import type { Action } from './action.ts';

/** Asks the holder of a pencil for a yes or no; what they are to be told is said on the slip. */
export const askHolder = (jobId: string): Promise<unknown> =>
  deed(async () => {
    const { challenge } = await client.pencils.challenge({ jobId, key: crypto.randomUUID() });
    say(`Tell them: a yes or no by ${wallInWords(challenge.until.wall)}. The clock runs on the Desk; nothing is let go by itself.`);
  });

/** Asks the holder of the pencil on this sheet. */
export const askForYes: Action = {
  name: 'ask-for-yes',
  label: () => 'Ask for a yes or no',
  when: ({ job }) => job?.state === 'pencilled',
  perform: ({ job }) => job && askHolder(job.id),
};
