import { client } from '../door.ts';
import { deed } from '../deeds.ts';
import type { Action } from './action.ts';

/** A job by hand, where there is no message to paste. */
export const newJob: Action = {
  name: 'new-job',
  label: () => 'Job by hand',
  when: () => true,
  perform: (scene) =>
    deed(async () => {
      const { job } = await client.jobs.add({ facts: { title: 'New job' }, key: crypto.randomUUID() });
      scene.go(`/jobs/${job.id}`);
    }),
};
