import { useState } from 'react';
import type { Trouble } from '../../../core/contract/base.ts';
import type { ImportRow } from '../../../core/contract/people.ts';
import { countInWords } from '../../../core/words/amounts.ts';
import { deed, useDeeds } from '../../deeds.ts';
import { client } from '../../door.ts';
import { Button } from '../../parts/button.tsx';
import { FateTable, fatesInWords } from '../../parts/fate-table.tsx';
import { Segments } from '../../parts/segments.tsx';
import sheet from '../../parts/sheet.module.css';
import { TroubleNote } from '../../parts/trouble-note.tsx';
import { troubleOf } from '../../trouble.ts';
import { FileField } from '../../parts/file-field.tsx';
import { readPeopleFile, type PeopleFile } from './people-file.ts';
import style from './people.module.css';

type Kind = 'client' | 'hand';
type Tried = { file: PeopleFile; rows: ImportRow[] };

/** Bring in a file: choose it, see what would become of each row, then bring in the new ones. */
export function BringPlace() {
  const { running } = useDeeds();
  const [kind, setKind] = useState<Kind>('client');
  const [tried, setTried] = useState<Tried | null>(null);
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const [added, setAdded] = useState<number | null>(null);

  const tryOut = async (file: PeopleFile, as: Kind): Promise<void> => {
    setTrouble(null);
    setAdded(null);
    try {
      const { rows } = await client.people.bring({ kind: as, format: file.format, text: file.text, try: true });
      setTried({ file, rows });
    } catch (error) {
      setTried(null);
      setTrouble(troubleOf(error));
    }
  };
  const choose = async (chosen: File): Promise<void> => {
    const read = await readPeopleFile(chosen);
    if ('file' in read) return tryOut(read.file, kind);
    setTried(null);
    setAdded(null);
    setTrouble(read.trouble);
  };
  const bring = async ({ file }: Tried): Promise<void> => {
    const brought = await deed(() => client.people.bring({ kind, format: file.format, text: file.text, try: false }), setTrouble);
    if (!brought) return;
    setTried(null);
    setAdded(brought.added);
  };
  const fresh = tried?.rows.filter((row) => row.fate === 'new').length ?? 0;
  const list = kind === 'client' ? { path: '/people', name: 'All clients' } : { path: '/people/hands', name: 'All hands' };
  return (
    <div className={style.steps}>
      <div className={sheet.titles}>
        <h1 className={sheet.title}>Bring in a file</h1>
        <a href={`#${list.path}`}>{list.name}</a>
      </div>
      <p>
        A table saved as CSV, with a row of heads (name, organisation, mail, phone, address), or an address book saved as vCard. It is read
        on this computer only, and tried first: nothing is saved until you say so.
      </p>
      <Segments
        label="They are"
        value={kind}
        options={[
          { value: 'client', label: 'clients' },
          { value: 'hand', label: 'hands' },
        ]}
        onChange={(next) => {
          setKind(next);
          setAdded(null);
          if (tried) void tryOut(tried.file, next);
        }}
      />
      <FileField
        label="File, CSV or vCard"
        accept=".csv,.tsv,.txt,.vcf,.vcard,text/csv,text/vcard"
        onChoose={(file) => void choose(file)}
      />
      {trouble ? <TroubleNote trouble={trouble} /> : null}
      <div aria-live="polite" className={style.steps}>
        {added === null ? null : (
          <p>
            <strong>{`${countInWords(added, kind)} brought in.`}</strong> <a href={`#${list.path}`}>Look at the list.</a>
          </p>
        )}
        {tried ? (
          <>
            <p>
              <strong>{tried.file.name}</strong>: {fatesInWords(tried.rows)}.
            </p>
            {fresh > 0 ? (
              <div>
                <Button kind="black" isDisabled={running > 0} onPress={() => void bring(tried)}>
                  {`Bring in ${fresh}`}
                </Button>
              </div>
            ) : null}
            <FateTable rows={tried.rows} />
          </>
        ) : null}
      </div>
    </div>
  );
}
