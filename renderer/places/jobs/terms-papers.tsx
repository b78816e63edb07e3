import { useState } from 'react';
import type { Job, Paper } from '../../../core/contract/jobs.ts';
import type { Place } from '../../../core/contract/parts.ts';
import type { Trouble } from '../../../core/contract/base.ts';
import { TERMS_CAUTION } from '../../../core/papers/terms-default.ts';
import { epochOf, wallAt } from '../../../core/time/read.ts';
import { wallInWords } from '../../../core/words/dates.ts';
import { deed, say } from '../../deeds.ts';
import { client } from '../../door.ts';
import { Button } from '../../parts/button.tsx';
import { DroppedFile, type GivenFile } from '../../parts/dropped-file.tsx';
import { savePaper } from '../../parts/paper-file.ts';
import { TroubleNote } from '../../parts/trouble-note.tsx';
import style from './agreed.module.css';

/** My terms on paper, and the copy that came back signed. */
export function TermsPapers({ job, home }: { job: Job; home: Place }) {
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const [file, setFile] = useState<GivenFile | null>(null);
  const kept = job.papers.filter(({ kind }) => kind === 'terms' || kind === 'signed copy');
  const isMade = kept.some(({ kind }) => kind === 'terms');
  const one = () => ({ id: job.id, version: job.version, key: crypto.randomUUID() });
  const make = async (): Promise<void> => {
    const made = await deed(() => client.jobs.terms(one()));
    if (!made) return;
    await deed(() => savePaper(made.paper.id));
    say('The terms are on paper.');
  };
  const keepSigned = async (): Promise<void> => {
    if (!file) return;
    const base64 = await file.base64();
    const signed = await deed(() => client.jobs.signed({ ...one(), name: file.name, base64 }), setTrouble);
    if (!signed) return;
    setFile(null);
    say(`${signed.paper.name} is kept.`);
  };
  return (
    <div className={style.part}>
      <h3>Terms</h3>
      {kept.length > 0 ? (
        <ul className={style.papers}>
          {kept.map((paper) => (
            <Kept key={paper.id} paper={paper} home={home} />
          ))}
        </ul>
      ) : null}
      <div className={style.row}>
        <Button onPress={() => void make()}>{isMade ? 'Put the terms on paper again' : 'Put the terms on paper'}</Button>
        <a href="#/setup">Edit the text in Setup</a>
      </div>
      <p className={style.second}>{TERMS_CAUTION}</p>
      <DroppedFile
        label="Signed copy"
        given={file}
        onGive={(given) => {
          setTrouble(null);
          setFile(given);
        }}
      />
      {file ? (
        <div>
          <Button onPress={() => void keepSigned()}>Keep the signed copy</Button>
        </div>
      ) : null}
      {trouble ? <TroubleNote trouble={trouble} /> : null}
    </div>
  );
}

function Kept({ paper, home }: { paper: Paper; home: Place }) {
  const what = paper.kind === 'terms' ? 'made' : 'came back signed, kept';
  return (
    <li className={style.paper}>
      <span className={style.name}>{paper.name}</span>
      <span className={style.second}>{`${what} ${wallInWords(wallAt(epochOf(paper.madeAt), home.zone))}`}</span>
      <Button kind="quiet" aria-label={`Save ${paper.name}`} onPress={() => void deed(() => savePaper(paper.id))}>
        Save
      </Button>
    </li>
  );
}
