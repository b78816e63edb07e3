import { useQuery } from '@tanstack/react-query';
import type { Document } from '../../../../core/contract/documents.ts';
import { documentInWords, titleOf } from '../../../../core/documents/words.ts';
import { formatMoney } from '../../../../core/money/format.ts';
import { dateIn } from '../../../../core/time/wall.ts';
import { paperDate } from '../../../../core/words/dates.ts';
import { ask } from '../../../ask.ts';
import list from '../../../parts/list.module.css';
import table from '../../../parts/table.module.css';
import style from '../setup.module.css';
import { OnFile } from './on-file.tsx';
import { holdsInWords } from './typed-document.ts';

/** Documents on file, mine and those of hands, by their last day. @param zone of home */
export function Documents({ zone }: { zone: string }) {
  const asked = useQuery(ask.documents.list.queryOptions({ input: {} }));
  const hands = useQuery(ask.people.hands.queryOptions({ input: {} })).data?.hands ?? [];
  if (!asked.data) return null;
  const { documents } = asked.data;
  const today = dateIn(zone, Temporal.Now.instant().epochMilliseconds);
  return (
    <>
      {documents.length === 0 ? (
        <p className={style.second}>Nothing on file. A job over a border then says what must be settled. Note your passport first.</p>
      ) : (
        <div className={table.scroll}>
          <table className={table.table}>
            <thead>
              <tr>
                <th scope="col">Document</th>
                <th scope="col">Holds in</th>
                <th scope="col">Last day</th>
              </tr>
            </thead>
            <tbody>
              {documents.map((document) => (
                <Row key={document.id} document={document} whose={hands.find(({ id }) => id === document.handId)?.name} today={today} />
              ))}
            </tbody>
          </table>
        </div>
      )}
      <p>
        <a href="#/setup/document/new">Note a document</a>
      </p>
      <OnFile />
      <p className={style.second}>
        What is on file is held against the days and countries of your jobs. Whether you may enter, work or fly is for others to say.
      </p>
    </>
  );
}

function Row({ document, whose, today }: { document: Document; whose: string | undefined; today: string }) {
  const { id, kind, title, until, issuedBy, limit, scan } = document;
  const second = [
    whose ?? '',
    title === '' || kind === 'other' ? '' : documentInWords(kind, null),
    issuedBy,
    limit ? `to ${formatMoney(limit, { code: true })}` : '',
    scan ? 'with a scan' : '',
  ].filter((part) => part !== '');
  const over = until !== null && until < today;
  return (
    <tr>
      <th scope="row">
        <a href={`#/setup/document/${id}`}>{titleOf(document)}</a> <span className={table.second}>{second.join(', ')}</span>
      </th>
      <td>{holdsInWords(document)}</td>
      <td className={over ? list.broken : undefined}>{until === null ? 'not noted' : `${paperDate(until)}${over ? ', run out' : ''}`}</td>
    </tr>
  );
}
