import type { Client } from '../../../core/contract/people.ts';
import { formatNumber } from '../../../core/money/format.ts';
import { countInWords } from '../../../core/words/amounts.ts';
import table from '../../parts/table.module.css';
import { asksInWords, listInWords } from './in-words.ts';
import style from './people.module.css';

/** What sets a client apart from the rate card, in a few words. */
function termsInWords({ tax, currency, payDays, depositPercent }: Client): string {
  return listInWords(
    tax === 'charge' ? '' : tax === 'exempt' ? 'tax exempt' : tax,
    currency ?? '',
    payDays === null ? '' : `pays in ${countInWords(payDays, 'day')}`,
    depositPercent === null ? '' : `deposit ${formatNumber(depositPercent)}\u00a0%`,
  );
}

export function ClientTable({ clients }: { clients: readonly (Client & { jobs: number })[] }) {
  return (
    <div className={table.scroll}>
      <table className={`${table.table} ${table.named}`}>
        <thead>
          <tr>
            <th scope="col">Client</th>
            <th scope="col">Main contact</th>
            <th scope="col">Terms of their own</th>
            <th scope="col">Always asks for</th>
            <th scope="col" className={table.figures}>
              Jobs
            </th>
          </tr>
        </thead>
        <tbody>
          {clients.map((client) => (
            <tr key={client.id}>
              <th scope="row">
                <a href={`#/people/client/${client.id}`}>{client.name}</a>
              </th>
              <td className={style.long}>
                {client.contacts[0]?.name ?? ''}{' '}
                <span className={table.second}>{client.contacts[0]?.email || client.contacts[0]?.phone || ''}</span>
              </td>
              <td>{termsInWords(client)}</td>
              <td>{asksInWords(client)}</td>
              <td className={table.figures}>{client.jobs}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
