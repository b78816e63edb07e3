import { useState } from 'react';
import type { Trouble } from '../../../core/contract/base.ts';
import type { ImportRow } from '../../../core/contract/people.ts';
import { deed } from '../../deeds.ts';
import { client } from '../../door.ts';
import { Segments } from '../../parts/segments.tsx';
import sheet from '../../parts/sheet.module.css';
import { TriedFile } from '../../parts/tried-file.tsx';
import { TroubleNote } from '../../parts/trouble-note.tsx';
import { troubleOf } from '../../trouble.ts';
import { FileField } from '../../parts/file-field.tsx';
import { readPeopleFile, type PeopleFile } from './people-file.ts';
import look from '../../parts/list.module.css';

type Kind = 'client' | 'hand';
type Tried = { file: PeopleFile; rows: ImportRow[] };

/** Bring in a file: choose it, see what would become of each row, then bring in the new ones. */
export function BringPlace() {
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
  const list = kind === 'client' ? { path: '/people', name: 'All clients' } : { path: '/people/hands', name: 'All hands' };
  return (
    <div className={look.steps}>
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
      <TriedFile tried={tried} added={added} what={kind} path={list.path} onBring={() => tried && void bring(tried)} />
    </div>
  );
}
