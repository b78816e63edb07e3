import { useState } from 'react';
import type { Trouble } from '../../../../core/contract/base.ts';
import { deed, say, useDeeds } from '../../../deeds.ts';
import { client } from '../../../door.ts';
import { Button } from '../../../parts/button.tsx';
import { DroppedFile, type GivenFile } from '../../../parts/dropped-file.tsx';
import { savePaper } from '../../../parts/paper-file.ts';
import sheet from '../../../parts/sheet.module.css';
import { TroubleNote } from '../../../parts/trouble-note.tsx';
import { sayWithUndo } from '../../../undo.ts';
import type { NamedDocument } from './typed-document.ts';

/** The scan of a document that is kept: saved to a file, replaced, or taken from it. */
export function Scan({ document }: { document: NamedDocument }) {
  const { running } = useDeeds();
  const [file, setFile] = useState<GivenFile | null>(null);
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const { id, version, scan, name } = document;
  const keep = async (): Promise<void> => {
    if (!file) return;
    const base64 = await file.base64();
    const kept = await deed(() => client.documents.attach({ id, version, name: file.name, base64, key: crypto.randomUUID() }), setTrouble);
    if (!kept) return;
    setFile(null);
    say(`The scan is with ${name}.`);
  };
  const take = async (): Promise<void> => {
    const bare = await deed(() => client.documents.putScan({ id, version, scanId: null }));
    if (!bare || !scan) return;
    const back = () => client.documents.putScan({ id, version: bare.document.version, scanId: scan.id });
    sayWithUndo('The scan is off; it stays among the papers.', 'Put it back', back, 'The scan is back.');
  };
  return (
    <>
      {scan ? (
        <div className={sheet.row}>
          <span>{scan.name}</span>
          <Button
            kind="quiet"
            isDisabled={running > 0}
            onPress={() => void deed(() => savePaper(scan.id))}
            aria-label={`Save the scan ${scan.name}`}
          >
            Save
          </Button>
          <Button kind="quiet" isDisabled={running > 0} onPress={() => void take()}>
            Take it off
          </Button>
        </div>
      ) : null}
      <DroppedFile
        label={scan ? 'Another scan' : 'Scan'}
        given={file}
        onGive={(given) => {
          setTrouble(null);
          setFile(given);
        }}
      />
      <p className={sheet.second}>A scan that was kept stays among the papers on this computer, also when the document is taken off.</p>
      {file ? (
        <div>
          <Button onPress={() => void keep()}>Keep the scan</Button>
        </div>
      ) : null}
      {trouble ? <TroubleNote trouble={trouble} /> : null}
    </>
  );
}
