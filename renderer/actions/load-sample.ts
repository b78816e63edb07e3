import { client } from '../door.ts';
import { deed, say } from '../deeds.ts';
import type { Action } from './action.ts';

/** Fills an empty store with the sample year. */
export const loadSample: Action = {
  name: 'load-sample',
  label: () => 'Load the sample year',
  when: ({ sample }) => sample?.empty === true && sample.loading === null,
  perform: () =>
    deed(async () => {
      await client.sample.load({});
      say('The sample year is here. Everybody in it is invented; the Desk says how to leave it.');
    }),
};
