import { client } from '../door.ts';
import { deed, say } from '../deeds.ts';
import type { Action } from './action.ts';

/** Takes everything out of a store that holds the sample; a snapshot is written first. */
export const leaveSample: Action = {
  name: 'leave-sample',
  label: () => 'Leave the sample and start anew',
  when: ({ sample }) => Boolean(sample?.loadedAt),
  perform: ({ go }) =>
    deed(async () => {
      const { snapshot } = await client.sample.leave({});
      go('/');
      say(`The store is empty. What was in it is kept: npm start -- --use-snapshot ${snapshot.name}`);
    }),
};
