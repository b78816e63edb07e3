import { useQuery } from '@tanstack/react-query';
import { epochOf, wallAt } from '../../../core/time/read.ts';
import { dateInWords } from '../../../core/words/dates.ts';
import { ask } from '../../ask.ts';
import { deed, useDeeds } from '../../deeds.ts';
import { client } from '../../door.ts';
import { Asked } from '../../parts/asked.tsx';
import { Button } from '../../parts/button.tsx';
import table from '../../parts/table.module.css';
import look from '../../parts/list.module.css';
import style from './people.module.css';

type Kind = 'client' | 'hand';
type Away = { kind: Kind; id: string; name: string; at: string };

const useAway = () => useQuery(ask.people.away.queryOptions({ input: {} }));
const dateOf = (at: string): string => dateInWords(wallAt(epochOf(at), Temporal.Now.timeZoneId()).slice(0, 10));

/** Puts somebody away; their sheet stays open and offers to take them out again. */
export function PutAway({ kind, one, unsaved }: { kind: Kind; one: { id: string; version: number }; unsaved: boolean }) {
  const { running } = useDeeds();
  const away = useAway().data?.away.some((each) => each.id === one.id) ?? true;
  if (away) return null;
  return (
    <span className={style.buttons}>
      {unsaved ? <span className={look.second}>Save first; then it can be put away.</span> : null}
      <Button
        isDisabled={running > 0 || unsaved}
        onPress={() => void deed(() => client.people.putAway({ kind, id: one.id, version: one.version }))}
      >
        Put away
      </Button>
    </span>
  );
}

function TakeOut({ one, label = 'Take out again' }: { one: Pick<Away, 'kind' | 'id' | 'name'>; label?: string }) {
  const { running } = useDeeds();
  return (
    <Button
      isDisabled={running > 0}
      onPress={() => void deed(() => client.people.takeOut({ kind: one.kind, id: one.id }))}
      aria-label={`${label}: ${one.name}`}
    >
      {label}
    </Button>
  );
}

/** On the sheet of somebody who was put away. */
export function AwayNote({ kind, id }: { kind: Kind; id: string }) {
  const found = useAway().data?.away.find((each) => each.id === id && each.kind === kind);
  if (!found) return null;
  return (
    <div className={style.away} role="status">
      <span>{`Put away on ${dateOf(found.at)}: no longer listed, kept with ${kind === 'client' ? 'their jobs' : 'all that is known of them'}.`}</span>
      <TakeOut one={found} />
    </div>
  );
}

/** Everybody that was put away, newest first. */
export function AwayList() {
  return (
    <Asked asked={useAway()}>
      {({ away }) =>
        away.length === 0 ? (
          <p className={look.second}>Nobody is put away.</p>
        ) : (
          <div className={table.scroll}>
            <table className={table.table}>
              <thead>
                <tr>
                  <th scope="col">Name</th>
                  <th scope="col">Is a</th>
                  <th scope="col">Put away on</th>
                  <th scope="col">
                    <span className="reader">Take out</span>
                  </th>
                </tr>
              </thead>
              <tbody>
                {away.map((one) => (
                  <tr key={one.id}>
                    <th scope="row">
                      <a href={`#/people/${one.kind}/${one.id}`}>{one.name}</a>
                    </th>
                    <td>{one.kind}</td>
                    <td>{dateOf(one.at)}</td>
                    <td className={table.figures}>
                      <TakeOut one={one} />
                    </td>
                  </tr>
                ))}
              </tbody>
            </table>
          </div>
        )
      }
    </Asked>
  );
}
