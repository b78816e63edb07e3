import { useState } from 'react';
import type { Trouble } from '../../../../core/contract/base.ts';
import type { CustomsList, ListRate } from '../../../../core/contract/documents.ts';
import type { Job, Paper } from '../../../../core/contract/jobs.ts';
import type { Money, Place } from '../../../../core/contract/parts.ts';
import { weightInWords } from '../../../../core/kit/measures.ts';
import { formatMoney } from '../../../../core/money/format.ts';
import { epochOf, wallAt } from '../../../../core/time/read.ts';
import { dateIn } from '../../../../core/time/wall.ts';
import { countInWords } from '../../../../core/words/amounts.ts';
import { dateInWords, wallInWords } from '../../../../core/words/dates.ts';
import { joined } from '../../../../core/words/lists.ts';
import { deed, say, useDeeds } from '../../../deeds.ts';
import { client } from '../../../door.ts';
import { Button } from '../../../parts/button.tsx';
import { savePaper } from '../../../parts/paper-file.ts';
import table from '../../../parts/table.module.css';
import { Fold } from '../../../parts/fold.tsx';
import { TroubleNote } from '../../../parts/trouble-note.tsx';
import style from './papers.module.css';
import { RatesForm } from './rates-form.tsx';

type Told = { list: CustomsList; crosses: boolean; ask: string; carnet: { fee: Money; security: Money; source: string } | null };

type Props = { job: Job; home: Place; currency: string; customs: Told; onRates: (rates: ListRate[]) => void };

/** What would be listed for customs, what is missing of it, and the papers that were made. @param currency of home */
export function Customs({ job, home, currency, customs, onRates }: Props) {
  const { running } = useDeeds();
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const { list, ask, carnet } = customs;
  const kept = job.papers.filter(({ kind }) => kind === 'customs list');
  const make = async (): Promise<void> => {
    const input = { id: job.id, version: job.version, rates: list.rates, key: crypto.randomUUID() };
    const made = await deed(() => client.documents.makeCustoms(input), setTrouble);
    if (!made) return;
    setTrouble(null);
    await deed(() => savePaper(made.pdf.id));
    say('The customs list is on paper, and as a table beside it.');
  };
  return (
    <div className={style.part} role="group" aria-labelledby="customs">
      <h3 id="customs">Customs list</h3>
      <p>{summary(list)}</p>
      {list.missing.map((sentence) => (
        <p key={sentence} className={style.broken}>
          {sentence}
        </p>
      ))}
      {list.values.length > 1 ? (
        <RatesForm list={list} home={currency} today={dateIn(home.zone, Temporal.Now.instant().epochMilliseconds)} onRates={onRates} />
      ) : null}
      {list.rows.length > 0 ? (
        <Fold title={`What is on it, ${countInWords(list.rows.length, 'line')}`}>
          <Lines list={list} />
        </Fold>
      ) : null}
      {carnet ? (
        <p className={style.second}>
          {`A carnet for it: a fee of ${formatMoney(carnet.fee, { code: true })}, and ${formatMoney(carnet.security, { code: true })} as security until the carnet is back (${carnet.source}).`}
        </p>
      ) : null}
      <p className={style.second}>{`What is asked for at the border, and whether a list will do: ask ${ask}.`}</p>
      {kept.length > 0 ? (
        <ul className={style.kept}>
          {kept.map((paper) => (
            <Kept key={paper.id} paper={paper} home={home} />
          ))}
        </ul>
      ) : null}
      <div className={style.buttons}>
        <Button isDisabled={running > 0 || list.rows.length === 0} onPress={() => void make()}>
          {kept.length > 0 ? 'Put it on paper again' : 'Put the customs list on paper'}
        </Button>
      </div>
      {trouble ? <TroubleNote trouble={trouble} /> : null}
    </div>
  );
}

/** "12 pieces, 14.2 kg, USD 12,345.00 in all. It names the units that were ticked out." */
function summary({ pieces, grams, values, total, packed, rates, rows }: CustomsList): string {
  if (rows.length === 0) return 'No kit is asked for now.';
  const worth = total ? formatMoney(total, { code: true }) : joined(values.map((value) => formatMoney(value, { code: true })));
  const by = rates.map(({ currency, rate, date }) => `1 ${currency} = ${rate} on ${dateInWords(date)}`);
  const said = [countInWords(pieces, 'piece'), grams > 0 ? weightInWords(grams) : '', worth].filter((part) => part !== '').join(', ');
  const which = packed ? 'It names the units that were ticked out.' : 'Until all are ticked out it names the first on the kit list.';
  return `${said}${by.length > 0 ? ` (${by.join('; ')})` : ''}. ${which}`;
}

function Lines({ list }: { list: CustomsList }) {
  return (
    <div className={table.scroll}>
      <table className={table.table}>
        <thead>
          <tr>
            <th scope="col">Thing and serial</th>
            <th scope="col" className={table.figures}>
              Pieces
            </th>
            <th scope="col" className={table.figures}>
              Weight
            </th>
            <th scope="col">Origin</th>
            <th scope="col" className={table.figures}>
              Value
            </th>
          </tr>
        </thead>
        <tbody>
          {list.rows.map(({ number, name, serial, count, grams, origin, value }) => (
            <tr key={number}>
              <th scope="row">
                {name} <span className={`${table.second} ${style.serial}`}>{serial}</span>
              </th>
              <td className={table.figures}>{count}</td>
              <td className={table.figures}>{grams === null ? 'not known' : weightInWords(grams)}</td>
              <td>{origin ?? 'not known'}</td>
              <td className={table.figures}>{value ? formatMoney(value, { code: true }) : 'not known'}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function Kept({ paper, home }: { paper: Paper; home: Place }) {
  return (
    <li>
      <span>{paper.name}</span> <span className={style.second}>{`made ${wallInWords(wallAt(epochOf(paper.madeAt), home.zone))}`}</span>{' '}
      <Button kind="quiet" aria-label={`Save ${paper.name}`} onPress={() => void deed(() => savePaper(paper.id))}>
        Save
      </Button>
    </li>
  );
}
