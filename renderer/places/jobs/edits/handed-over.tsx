import { useCallback } from 'react';
import type { HandOver, Reading } from '../../../../core/contract/handovers.ts';
import type { Place } from '../../../../core/contract/parts.ts';
import { epochOf, wallAt } from '../../../../core/time/read.ts';
import { wallInWords } from '../../../../core/words/dates.ts';
import { deed, say, useDeeds } from '../../../deeds.ts';
import { client } from '../../../door.ts';
import { Button } from '../../../parts/button.tsx';
import { copyText } from '../../../parts/copy.ts';
import { Fold } from '../../../parts/fold.tsx';
import { savePaper } from '../../../parts/paper-file.ts';
import { useOneOpen } from '../../../parts/use-one-open.ts';
import { sayWithUndo } from '../../../undo.ts';
import { CheckCopy } from './check-copy.tsx';
import { FileList } from './file-list.tsx';
import { GoneForm, OriginalsForm, TakeBackForm } from './originals-forms.tsx';
import style from './hand-over.module.css';

/** One hand-over: what went where, the note, the message, and what becomes of the originals. */
export function HandedOver(props: { handOver: HandOver; name: string; home: Place; reading: Reading | null }) {
  const { handOver, name, home } = props;
  const { how, where, note, paper, message, files, originals, takenBack, sentence } = handOver;
  const [open, setOpen, close] = useOneOpen<'check' | 'gone' | 'originals' | 'take back'>();
  const check = useCallback(() => setOpen('check'), [setOpen]);
  const { running } = useDeeds();
  const reading = props.reading?.state === 'reading' && props.reading.compares === handOver.id ? props.reading : null;
  const moment = (instant: string): string => wallInWords(wallAt(epochOf(instant), home.zone));
  const copy = async (): Promise<void> =>
    say(
      (await copyText(message.text))
        ? 'Copied. Paste it into your mail and put the PDF with it.'
        : 'The clipboard refused. Mark the message and copy it by hand.',
    );
  return (
    <div className={`${style.one} ${takenBack ? style.gone : ''}`}>
      <p>
        <span className={style.strong}>{sentence}</span>{' '}
        <span className={style.where}>{how === 'link' ? where : `Labelled "${where}".`}</span>
      </p>
      {note === '' ? null : <p className={style.second}>{note}</p>}
      <div className={style.buttons}>
        {paper ? (
          <Button kind="quiet" onPress={() => void deed(() => savePaper(paper.id))} aria-label={`Save the delivery note of ${name}`}>
            Save the delivery note
          </Button>
        ) : null}
        {takenBack ? null : (
          <>
            <Button kind="quiet" onPress={() => void copy()}>
              Copy the message
            </Button>
            <a href={mailDraft(message)}>Open it as a mail draft</a>
            <Button kind="quiet" onPress={check}>
              Check a copy
            </Button>
            <Button kind="quiet" onPress={() => setOpen('take back')}>
              Take it back
            </Button>
          </>
        )}
      </div>
      {takenBack ? (
        <div className={style.buttons}>
          <span>{`Taken back ${moment(takenBack.at)}: ${takenBack.why}`}</span>
          <Button kind="quiet" isDisabled={running > 0} onPress={() => void standAgain(handOver, name)}>
            Let it stand again
          </Button>
        </div>
      ) : (
        <div className={style.buttons}>
          <span className={originals.mayGo ? style.strong : undefined}>{originals.sentence}</span>
          {originals.kind === 'kept until' && originals.goneAt === null ? (
            <Button kind="quiet" onPress={() => setOpen('gone')} aria-label={`They were deleted: the originals of ${name}`}>
              They were deleted
            </Button>
          ) : null}
          {originals.goneAt === null ? (
            <Button kind="quiet" onPress={() => setOpen('originals')} aria-label={`Change: the originals of ${name}`}>
              Change
            </Button>
          ) : (
            <Button kind="quiet" isDisabled={running > 0} onPress={() => void thereAfterAll(handOver, name)}>
              They are there after all
            </Button>
          )}
        </div>
      )}
      {open === 'check' || reading ? <CheckCopy handOver={handOver} reading={reading} onOpen={check} onDone={close} /> : null}
      {open === 'gone' ? <GoneForm handOver={handOver} name={name} onDone={close} /> : null}
      {open === 'originals' ? <OriginalsForm handOver={handOver} name={name} onDone={close} /> : null}
      {open === 'take back' ? <TakeBackForm handOver={handOver} name={name} onDone={close} /> : null}
      <Fold title="Files">{() => <FileList files={files} />}</Fold>
      <Fold title="Message">
        <p className={style.second}>{`Subject: ${message.subject}`}</p>
        <pre className={style.message}>{message.text}</pre>
      </Fold>
    </div>
  );
}

/** The mail program opens a draft; nothing is sent. */
function mailDraft({ to, subject, text }: HandOver['message']): string {
  return `mailto:${encodeURIComponent(to)}?subject=${encodeURIComponent(subject)}&body=${encodeURIComponent(text.replaceAll('\n', '\r\n'))}`;
}

async function standAgain({ id, version }: HandOver, name: string): Promise<void> {
  const kept = await deed(() => client.handovers.standAgain({ id, version, key: crypto.randomUUID() }));
  if (kept) say(`The hand-over of ${name} stands again.`);
}

async function thereAfterAll({ id, version, originals }: HandOver, name: string): Promise<void> {
  const kept = await deed(() => client.handovers.originalsThere({ id, version, key: crypto.randomUUID() }));
  if (!kept) return;
  const { goneAt, goneWhy } = originals;
  const undo = () =>
    client.handovers.originalsGone({
      id,
      version: kept.handOver.version,
      why: goneWhy,
      ...(goneAt === null ? {} : { at: goneAt }),
      key: crypto.randomUUID(),
    });
  sayWithUndo(`The originals of ${name} are there after all.`, 'Undo', undo, 'They are noted as deleted.');
}
