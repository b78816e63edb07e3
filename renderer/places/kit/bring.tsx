import { useState } from 'react';
import type { Trouble } from '../../../core/contract/base.ts';
import type { ImportRow } from '../../../core/contract/people.ts';
import { deed } from '../../deeds.ts';
import { client } from '../../door.ts';
import { FileField } from '../../parts/file-field.tsx';
import sheet from '../../parts/sheet.module.css';
import { readTextFile, type TextFile } from '../../parts/text-file.ts';
import { TriedFile } from '../../parts/tried-file.tsx';
import { TroubleNote } from '../../parts/trouble-note.tsx';
import { troubleOf } from '../../trouble.ts';
import look from '../../parts/list.module.css';

type Tried = { file: TextFile; rows: ImportRow[] };

/** Bring in a list of kit: choose it, see what would become of each row, then bring in the new things. */
export function BringKitPlace() {
  const [tried, setTried] = useState<Tried | null>(null);
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const [added, setAdded] = useState<number | null>(null);

  const choose = async (chosen: File): Promise<void> => {
    setTried(null);
    setAdded(null);
    setTrouble(null);
    const read = await readTextFile(chosen, 'Save the table as CSV and choose that.');
    if ('trouble' in read) return setTrouble(read.trouble);
    try {
      const { rows } = await client.kit.bring({ text: read.file.text, try: true });
      setTried({ file: read.file, rows });
    } catch (error) {
      setTrouble(troubleOf(error));
    }
  };
  const bring = async ({ file }: Tried): Promise<void> => {
    const brought = await deed(() => client.kit.bring({ text: file.text, try: false }), setTrouble);
    if (!brought) return;
    setTried(null);
    setAdded(brought.added);
  };
  return (
    <div className={look.steps}>
      <div className={sheet.titles}>
        <h1 className={sheet.title}>Bring in a file of kit</h1>
        <a href="#/kit">All things</a>
      </div>
      <p>
        A table saved as CSV, with a row of heads: name, and any of count, serial, place, service from and service to, what it does, weight,
        size, Wh, battery, draw, owner, value, bought, note. Lines of one name are one thing with as many units. It is read on this computer
        only, and tried first: nothing is saved until you say so.
      </p>
      <FileField label="File, CSV" accept=".csv,.tsv,.txt,text/csv" onChoose={(file) => void choose(file)} />
      {trouble ? <TroubleNote trouble={trouble} /> : null}
      <TriedFile tried={tried} added={added} what="thing" path="/kit" onBring={() => tried && void bring(tried)} />
    </div>
  );
}
