import { useState } from 'react';
import type { HandedFile } from '../../../../core/contract/handovers.ts';
import { countInWords } from '../../../../core/words/amounts.ts';
import { byteFigures, bytesInWords } from '../../../../core/words/bytes.ts';
import { oneLine } from '../../../../core/words/visible.ts';
import { say } from '../../../deeds.ts';
import { Button } from '../../../parts/button.tsx';
import { copyText } from '../../../parts/copy.ts';
import table from '../../../parts/table.module.css';
import style from './hand-over.module.css';

/** So many rows are shown before somebody asks for the others. */
const FIRST = 6;
/** Enough digits to compare two lists by eye; the paper and the copied list have all of them. */
const SHORT = 8;

/** Files with their sizes and the first digits of their checksums. */
export function FileList({ files }: { files: readonly HandedFile[] }) {
  const [all, setAll] = useState(false);
  const shown = all ? files : files.slice(0, FIRST);
  const total = files.reduce((sum, { bytes }) => sum + bytes, 0);
  const copy = async (): Promise<void> => {
    const copied = await copyText(files.map(({ name, hash }) => `${hash}  ${name}`).join('\n'));
    say(copied ? 'Copied: a checksum and a name on each line.' : 'The clipboard refused. The delivery note has all checksums.');
  };
  return (
    <div className={`${table.scroll} ${style.table}`}>
      <table className={table.table}>
        <thead>
          <tr>
            <th scope="col">File</th>
            <th scope="col">Checksum</th>
            <th scope="col" className={table.figures}>
              Bytes
            </th>
          </tr>
        </thead>
        <tbody>
          {shown.map(({ name, hash, bytes }) => (
            <tr key={name}>
              <th scope="row">{oneLine(name)}</th>
              <td className={style.sum} title={hash}>{`${hash.slice(0, SHORT)}…`}</td>
              <td className={table.figures}>{byteFigures(bytes)}</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr className={style.total}>
            <th scope="row" colSpan={2}>
              {`${countInWords(files.length, 'file')}, ${bytesInWords(total)}`}
            </th>
            <td className={table.figures}>{byteFigures(total)}</td>
          </tr>
        </tfoot>
      </table>
      <div className={style.buttons}>
        {files.length > FIRST ? (
          <Button kind="quiet" onPress={() => setAll(!all)}>
            {all ? 'Show the first only' : `Show all ${files.length}`}
          </Button>
        ) : null}
        <Button kind="quiet" onPress={() => void copy()}>
          Copy all checksums
        </Button>
      </div>
    </div>
  );
}
