import { useEffect, useState } from 'react';
import type { HandOver, Reading } from '../../../../core/contract/handovers.ts';
import { oneLine } from '../../../../core/words/visible.ts';
import { deed } from '../../../deeds.ts';
import { client } from '../../../door.ts';
import { Button } from '../../../parts/button.tsx';
import { ReadFiles, ReadingProgress, useReading } from './read-files.tsx';
import style from './hand-over.module.css';

type Compared = Awaited<ReturnType<typeof client.handovers.compare>>;

/** A copy is read and held against the list that was handed over: on another disk, or once more before the originals go. */
export function CheckCopy(props: { handOver: HandOver; reading: Reading | null; onOpen: () => void; onDone: () => void }) {
  const { handOver, onOpen, onDone } = props;
  const { id, deliverableId } = handOver;
  const [begun, setBegun] = useState(props.reading);
  const [typed, setTyped] = useState('');
  const [compared, setCompared] = useState<Compared | null>(null);
  const reading = useReading(begun);
  const done = reading?.state === 'done' ? reading.run : null;
  // One that is found under way after a reload stays open when it ends.
  useEffect(onOpen, [onOpen]);
  useEffect(() => {
    if (done !== null)
      void deed(() => client.handovers.compare({ id, from: { run: done } })).then((result) => result && setCompared(result));
  }, [done, id]);
  if (compared) return <Result compared={compared} onDone={onDone} />;
  if (reading?.state === 'reading' || done !== null) return reading ? <ReadingProgress reading={reading} onStop={setBegun} /> : null;
  return (
    <ReadFiles
      label="The copy"
      read="Check it"
      begin={(paths) => client.handovers.begin({ deliverableId, paths, compares: id })}
      typed={typed}
      onType={setTyped}
      before={reading}
      onBegin={setBegun}
      onLeave={onDone}
    />
  );
}

function Result({ compared, onDone }: { compared: Compared; onDone: () => void }) {
  const { sentence, whole, changed, missing, extra, moved } = compared;
  const parts = [
    { label: 'Changed', names: changed },
    { label: 'Missing', names: missing },
    { label: 'Under another name', names: moved.map(({ from, to }) => `${from}, now ${to}`) },
    { label: 'Not on the list', names: extra },
  ].filter(({ names }) => names.length > 0);
  return (
    <div role="status">
      <p className={whole ? style.strong : style.broken}>{sentence}</p>
      {parts.map(({ label, names }) => (
        <p key={label} className={style.second}>
          {`${label}: ${names.slice(0, MOST_NAMED).map(oneLine).join('; ')}${names.length > MOST_NAMED ? `; and ${names.length - MOST_NAMED} more` : ''}.`}
        </p>
      ))}
      <Button kind="quiet" onPress={onDone}>
        Close the check
      </Button>
    </div>
  );
}

/** So many names are shown of each kind. */
const MOST_NAMED = 20;
