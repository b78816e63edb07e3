import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { Double } from '../../../core/contract/people.ts';
import { countInWords } from '../../../core/words/amounts.ts';
import { ask } from '../../ask.ts';
import { deed, say, useDeeds } from '../../deeds.ts';
import { client } from '../../door.ts';
import { Button } from '../../parts/button.tsx';
import { Fold } from '../../parts/fold.tsx';
import { Segments } from '../../parts/segments.tsx';
import look from '../../parts/list.module.css';
import style from './people.module.css';

/** Pairs that look like the same person or business, each with why. */
export function Doubles({ kind }: { kind: 'client' | 'hand' }) {
  const { data } = useQuery(ask.people.doubles.queryOptions({ input: {} }));
  const pairs = data?.doubles.filter((pair) => pair.kind === kind) ?? [];
  if (pairs.length === 0) return null;
  return (
    <Fold title={`${countInWords(pairs.length, 'pair')} ${pairs.length === 1 ? 'looks' : 'look'} like the same ${kind}`}>
      <p className={look.second}>
        {kind === 'client'
          ? 'Folding moves the jobs to the one that stays and fills its empty fields; the other is put away.'
          : 'Open both, take over what is missing, and put one away.'}
      </p>
      <ul className={style.pairs}>
        {pairs.map((pair) => (
          <li key={`${pair.a.id} ${pair.b.id}`} className={style.pair}>
            <span>
              <a href={`#/people/${kind}/${pair.a.id}`}>{pair.a.name}</a> and <a href={`#/people/${kind}/${pair.b.id}`}>{pair.b.name}</a>:{' '}
              {pair.why}
            </span>
            {kind === 'client' ? <FoldInto pair={pair} /> : null}
          </li>
        ))}
      </ul>
    </Fold>
  );
}

/** Which of the two stays, and folding the other into it. */
function FoldInto({ pair: { a, b } }: { pair: Double }) {
  const { running } = useDeeds();
  const [stays, setStays] = useState<'a' | 'b'>('a');
  const [keep, fold] = stays === 'a' ? [a, b] : [b, a];
  const merge = (): Promise<unknown> =>
    deed(async () => {
      const versions = await Promise.all([keep, fold].map(({ id }) => client.people.client({ id })));
      const [kept, folded] = versions.map((each) => each.client.version);
      if (kept === undefined || folded === undefined) return;
      await client.people.merge({ keep: keep.id, fold: fold.id, keepVersion: kept, foldVersion: folded });
      say(`${fold.name} is folded into ${keep.name}, and put away.`);
    });
  return (
    <span className={style.buttons}>
      <Segments
        label={`Which stays, ${a.name} or ${b.name}`}
        bare
        value={stays}
        options={[
          { value: 'a', label: 'the first stays' },
          { value: 'b', label: 'the second stays' },
        ]}
        onChange={setStays}
      />
      <Button isDisabled={running > 0} onPress={() => void merge()} aria-label={`Fold the other into it: ${fold.name} into ${keep.name}`}>
        Fold the other into it
      </Button>
    </span>
  );
}
