import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { PackRow } from '../../../core/contract/kit.ts';
import { packInWords, stillOut } from '../../../core/kit/pack.ts';
import { parseNumber } from '../../../core/money/parse.ts';
import { epochOf } from '../../../core/time/read.ts';
import { momentAt } from '../../../core/words/moments.ts';
import { ask } from '../../ask.ts';
import { deed, useDeeds } from '../../deeds.ts';
import { client } from '../../door.ts';
import { Button } from '../../parts/button.tsx';
import { EditorForm } from '../../parts/editor-form.tsx';
import { Field } from '../../parts/field.tsx';
import { Fold } from '../../parts/fold.tsx';
import table from '../../parts/table.module.css';
import { Tick } from '../../parts/tick.tsx';
import style from './trip.module.css';

type Counts = Pick<PackRow, 'out' | 'back' | 'missing'>;

const named = ({ name, serial }: PackRow): string => (serial === '' ? name : `${name} ${serial}`);

/** The list to pack by and to come home by: each unit and each counted thing ticked out, and back. */
export function PackList({ jobId, zone }: { jobId: string; zone: string }) {
  const data = useQuery(ask.kit.packList.queryOptions({ input: { jobId } })).data;
  if (!data || data.rows.length === 0) return null;
  const { rows, homeAt } = data;
  const tick = (changed: readonly (readonly [PackRow, Counts])[]): Promise<unknown> => {
    const ticks = changed.map(([{ item, serial }, { out, back, missing }]) => ({ item, serial, out, back, missing }));
    return deed(() => client.kit.pack({ jobId, ticks, key: crypto.randomUUID() }));
  };
  return (
    <section aria-label="Pack list" className={style.pack}>
      <Fold title={<span className={style.second}>{`Pack list: ${standing(rows)}`}</span>}>
        <PackTable rows={rows} tick={tick} />
        {homeAt ? (
          <p
            className={style.second}
          >{`Home again ${momentAt(epochOf(homeAt), { zone }, { zone })}; what is out then is told on the Desk.`}</p>
        ) : null}
      </Fold>
    </section>
  );
}

function standing(rows: readonly PackRow[]): string {
  const out = packInWords(rows, stillOut);
  const missing = packInWords(rows, (row) => row.missing);
  const said = [out ? `${out} out` : '', missing ? `${missing} did not come back` : ''].filter((part) => part !== '');
  if (said.length > 0) return said.join('; ');
  return rows.some((row) => row.out > 0) ? 'everything is back' : 'nothing is packed yet';
}

type Ticking = (changed: readonly (readonly [PackRow, Counts])[]) => Promise<unknown>;
const isOut = (row: PackRow): Counts => ({ out: row.toPack, back: 0, missing: 0 });
const isBack = ({ out, missing }: PackRow): Counts => ({ out, back: out - missing, missing });

function PackTable({ rows, tick }: { rows: readonly PackRow[]; tick: Ticking }) {
  const { running } = useDeeds();
  // Of a thing with more units than are needed, whoever packs chooses which.
  const toPack = rows.filter((row, at) => row.out === 0 && at < firstOf(rows, row) + row.needed);
  const toComeBack = rows.filter((row) => stillOut(row) > 0);
  return (
    <>
      <div className={style.buttons}>
        {toPack.length > 0 ? (
          <Button isDisabled={running > 0} onPress={() => void tick(toPack.map((row) => [row, isOut(row)] as const))}>
            All of it is packed
          </Button>
        ) : null}
        {toComeBack.length > 0 ? (
          <Button isDisabled={running > 0} onPress={() => void tick(toComeBack.map((row) => [row, isBack(row)] as const))}>
            All of it is back
          </Button>
        ) : null}
      </div>
      <div className={table.scroll}>
        <table className={table.table}>
          <thead>
            <tr>
              <th scope="col">To pack</th>
              <th scope="col" className={table.figures}>
                Count
              </th>
              <th scope="col">Out</th>
              <th scope="col">Back</th>
              <th scope="col">Missing</th>
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <Row key={`${row.item} ${row.serial}`} row={row} tick={tick} />
            ))}
          </tbody>
        </table>
      </div>
    </>
  );
}

const firstOf = (rows: readonly PackRow[], { item }: PackRow): number => rows.findIndex((other) => other.item === item);

function Row({ row, tick }: { row: PackRow; tick: Ticking }) {
  const [asking, setAsking] = useState(false);
  const { running } = useDeeds();
  const left = stillOut(row);
  const set = (counts: Counts): void => void tick([[row, counts]]);
  const mark = (): void => (left === 1 ? set({ ...row, missing: row.missing + 1 }) : setAsking(true));
  return (
    <tr>
      <th scope="row">
        {named(row)}{' '}
        <span className={table.second}>{[row.place, row.needed === 0 ? 'not needed any more' : ''].filter(Boolean).join(', ')}</span>
      </th>
      <td className={table.figures}>{row.out > 0 ? row.out : row.toPack}</td>
      <td>
        <Tick checked={row.out > 0} onChange={(out) => set(out ? isOut(row) : { out: 0, back: 0, missing: 0 })}>
          <span className="reader">{`${named(row)} is `}</span>out
        </Tick>
      </td>
      <td>
        {row.out > 0 && row.missing < row.out ? (
          <Tick checked={left === 0} onChange={(back) => set(back ? isBack(row) : { ...row, back: 0 })}>
            <span className="reader">{`${named(row)} is `}</span>back
          </Tick>
        ) : null}
      </td>
      <td>
        {asking ? (
          <HowMany
            left={left}
            onKeep={(missing) => set({ out: row.out, back: row.out - row.missing - missing, missing: row.missing + missing })}
            onLeave={() => setAsking(false)}
          />
        ) : row.missing > 0 ? (
          <span className={style.buttons}>
            <span className={style.broken}>{`${row.missing} did not come back`}</span>
            <Button
              kind="quiet"
              isDisabled={running > 0}
              onPress={() => set({ ...row, back: row.back + row.missing, missing: 0 })}
              aria-label={`${named(row)} was found`}
            >
              Found
            </Button>
          </span>
        ) : left > 0 ? (
          <Button kind="quiet" isDisabled={running > 0} onPress={mark} aria-label={`${named(row)} did not come back`}>
            Did not come back
          </Button>
        ) : null}
      </td>
    </tr>
  );
}

/** How many of a counted thing are missing; the rest of it is back. */
function HowMany({ left, onKeep, onLeave }: { left: number; onKeep: (missing: number) => void; onLeave: () => void }) {
  const [typed, setTyped] = useState('1');
  const read = parseNumber(typed);
  const count = read.ok ? Number(read.value) : 0;
  const wrong = Number.isInteger(count) && count >= 1 && count <= left ? undefined : `is not between 1 and ${left}`;
  const keep = (): void => {
    if (wrong) return;
    onKeep(count);
    onLeave();
  };
  return (
    <EditorForm label="How many did not come back" className={style.missing} onKeep={keep} onLeave={onLeave}>
      <Field label={`Missing, of ${left}`} figures inputMode="numeric" value={typed} onChange={setTyped} error={wrong} />
      <Button type="submit">The rest is back</Button>
    </EditorForm>
  );
}
