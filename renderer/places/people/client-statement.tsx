import { useQuery } from '@tanstack/react-query';
import type { Money } from '../../../core/contract/parts.ts';
import { entryInWords, type StatementRow } from '../../../core/invoices/statement.ts';
import { formatMoney } from '../../../core/money/format.ts';
import { negate } from '../../../core/money/money.ts';
import { countInWords } from '../../../core/words/amounts.ts';
import { paperDate } from '../../../core/words/dates.ts';
import { ask } from '../../ask.ts';
import { deed, say } from '../../deeds.ts';
import { client } from '../../door.ts';
import { Asked } from '../../parts/asked.tsx';
import { Button } from '../../parts/button.tsx';
import { Fold } from '../../parts/fold.tsx';
import { Group } from '../../parts/group.tsx';
import { savePaper } from '../../parts/paper-file.ts';
import table from '../../parts/table.module.css';
import style from './people.module.css';

/** What a client was billed and has paid, with what is left after each, and its paper; nothing before the first bill. */
export function ClientStatement({ id }: { id: string }) {
  const asked = useQuery(ask.invoices.statement.queryOptions({ input: { clientId: id } }));
  return (
    <Asked asked={asked}>
      {({ asOf, statements }) =>
        statements.length === 0 ? null : (
          <Group title="Statement">
            {statements.map((one) => (
              <OneCurrency key={one.currency} id={id} asOf={asOf} {...one} />
            ))}
          </Group>
        )
      }
    </Asked>
  );
}

type One = { id: string; asOf: string; currency: string; rows: readonly StatementRow[]; balance: Money };

function OneCurrency({ id, asOf, currency, rows, balance }: One) {
  const put = async (): Promise<void> => {
    const made = await deed(() => client.invoices.statementPaper({ clientId: id, currency, asOf, key: crypto.randomUUID() }));
    if (!made) return;
    await deed(() => savePaper(made.paper.id));
    say(`${made.paper.name} is made.`);
  };
  return (
    <div className={style.statement}>
      <p>{`${standing(balance)} on ${paperDate(asOf)}.`}</p>
      <Fold title={`${countInWords(rows.length, 'entry', 'entries')} in ${currency}`}>
        <Entries rows={rows} />
      </Fold>
      <div>
        <Button onPress={() => void put()}>{`Put the statement in ${currency} on paper`}</Button>
      </div>
    </div>
  );
}

function standing(balance: Money): string {
  if (balance.minor === 0) return `Nothing is open in ${balance.currency}`;
  return balance.minor > 0
    ? `${formatMoney(balance, { code: true })} is open`
    : `${formatMoney(negate(balance), { code: true })} is their credit`;
}

function Entries({ rows }: { rows: readonly StatementRow[] }) {
  return (
    <div className={table.scroll}>
      <table className={table.table}>
        <thead>
          <tr>
            <th scope="col">Date</th>
            <th scope="col">What</th>
            <th scope="col" className={table.figures}>
              Amount
            </th>
            <th scope="col" className={table.figures}>
              Balance
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row, index) => (
            // The order of the rows is fixed by what they say.
            <tr key={index}>
              <td>{paperDate(row.on)}</td>
              <td>{entryInWords(row)}</td>
              <td className={table.figures}>{formatMoney(row.amount)}</td>
              <td className={table.figures}>{formatMoney(row.balance)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
