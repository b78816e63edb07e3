import { useState } from 'react';
import type { Trouble } from '../../../core/contract/base.ts';
import { Knows } from '../../../core/contract/knows.ts';
import { Job } from '../../../core/contract/jobs.ts';
import { deed, useDeeds } from '../../deeds.ts';
import { client } from '../../door.ts';
import { Button } from '../../parts/button.tsx';
import { ClashNote } from '../../parts/clash-note.tsx';
import { Group } from '../../parts/group.tsx';
import sheet from '../../parts/sheet.module.css';
import { TroubleNote } from '../../parts/trouble-note.tsx';
import { newestJob } from './change-job.ts';
import { OnSite, PaysAndPapers, Rights, ThePlace, ToFilm } from './knows-fields.tsx';
import { knowsInWords } from './knows-words.ts';

const flat = (knows: Knows) => knowsInWords(knows).flatMap((group) => group.said);
const same = (a: Knows, b: Knows): boolean => JSON.stringify(a) === JSON.stringify(b);
/** Rows left wholly empty are dropped. */
const tidy = (knows: Knows): Knows => ({
  ...knows,
  onSite: knows.onSite.filter((one) => Object.values(one).some((text) => text.trim() !== '')),
});

const focusFirst = (form: HTMLFormElement | null): void => form?.querySelector('input')?.focus();

/** Everything a job may know, to be filled in and kept at once. */
export function KnowsForm({ job, onDone }: { job: Job; onDone: () => void }) {
  const { running } = useDeeds();
  const [start, setStart] = useState(job);
  const [knows, setKnows] = useState(job.knows);
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const stored = Job.safeParse(trouble?.current).data;

  const saveOver = async (base: Job): Promise<void> => {
    setTrouble(null);
    const newest = newestJob(job);
    // Other facts may move on meanwhile; only a change to what is written here stands against it.
    const { version } = same(newest.knows, base.knows) ? newest : base;
    const saved = await deed(
      () => client.jobs.saveKnows({ id: job.id, version, knows: tidy(knows), key: crypto.randomUUID() }),
      setTrouble,
    );
    if (saved) onDone();
  };
  const part = { knows, change: (changed: Partial<Knows>) => setKnows({ ...knows, ...changed }), trouble };
  return (
    <form
      ref={focusFirst}
      aria-label="What the job knows"
      onSubmit={(event) => {
        event.preventDefault();
        void saveOver(start);
      }}
    >
      <Group title="Who pays, and papers">
        <PaysAndPapers {...part} />
      </Group>
      <Group title="On site">
        <OnSite {...part} />
      </Group>
      <Group title="The place">
        <ThePlace {...part} />
      </Group>
      <Group title="What must be filmed">
        <ToFilm {...part} />
      </Group>
      <Group title="Rights and approval">
        <Rights {...part} />
      </Group>
      <div className={sheet.bar}>
        {stored ? (
          <ClashNote
            name={job.title}
            theirs={flat(stored.knows)}
            mine={flat(knows)}
            onTheirs={() => {
              setStart(stored);
              setKnows(stored.knows);
              setTrouble(null);
            }}
            onMine={() => {
              setStart(stored);
              void saveOver(stored);
            }}
          />
        ) : trouble ? (
          <TroubleNote trouble={trouble} />
        ) : null}
        <div className={sheet.row}>
          <Button type="submit" isDisabled={running > 0 || stored !== undefined}>
            Keep what the job knows
          </Button>
          <Button kind="quiet" onPress={onDone}>
            Leave as it was
          </Button>
        </div>
      </div>
    </form>
  );
}
