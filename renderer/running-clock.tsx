import { useQuery } from '@tanstack/react-query';
import { lengthInWords } from '../core/words/amounts.ts';
import { ask } from './ask.ts';
import { deed, say, useDeeds } from './deeds.ts';
import { client } from './door.ts';
import style from './frame.module.css';
import { Button } from './parts/button.tsx';

/** The clock that runs on an edit, seen and stopped from every place; nothing while none runs. */
export function RunningClock() {
  const asked = useQuery({
    ...ask.spent.running.queryOptions({ input: {} }),
    refetchInterval: ({ state }) => (state.data?.running ? 30_000 : false),
  });
  const { running: saving } = useDeeds();
  const running = asked.data?.running;
  if (!running) return null;
  const { id, version, jobId, name, stage, minutes } = running;
  const stop = async (): Promise<void> => {
    const kept = await deed(() => client.spent.stop({ id, version, key: crypto.randomUUID() }));
    if (kept) say(kept.entry ? `${lengthInWords(kept.entry.minutes)} on ${name} kept.` : 'Not a minute was spent; nothing was kept.');
  };
  return (
    <p className={style.clock}>
      <a href={`#/jobs/${jobId}`}>{`${name}, ${stage}: ${lengthInWords(minutes)}`}</a>
      <Button kind="quiet" isDisabled={saving > 0} onPress={() => void stop()}>
        Stop the clock
      </Button>
    </p>
  );
}
