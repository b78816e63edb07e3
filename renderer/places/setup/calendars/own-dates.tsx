import { useState } from 'react';
import type { Trouble } from '../../../../core/contract/base.ts';
import type { CalendarOut } from '../../../../core/contract/calendars.ts';
import { countInWords } from '../../../../core/words/amounts.ts';
import { deed, say, useDeeds } from '../../../deeds.ts';
import { client } from '../../../door.ts';
import { snapshotInWords } from '../../../foot.tsx';
import { Button } from '../../../parts/button.tsx';
import { copyText } from '../../../parts/copy.ts';
import { Field } from '../../../parts/field.tsx';
import { Tick } from '../../../parts/tick.tsx';
import { TroubleNote } from '../../../parts/trouble-note.tsx';
import { fieldTrouble } from '../../../trouble.ts';
import style from './calendars.module.css';

/** Where my own dates are written, and the feed that serves them on this computer. */
export function OwnDates({ out }: { out: CalendarOut }) {
  const [folder, setFolder] = useState(out.folder);
  const [isOn, setOn] = useState(out.isOn || out.folder === '');
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const { running } = useDeeds();
  const { version } = out;
  const keep = async (): Promise<void> => {
    setTrouble(null);
    const kept = await deed(() => client.calendars.saveOut({ version, folder, isOn }), setTrouble);
    if (kept) say(kept.out.isOn ? `${kept.out.file} is written after every change.` : 'Nothing is written any more.');
  };
  return (
    <>
      <p className={style.second}>
        One calendar file with pencils as tentative, ink as confirmed and due dates of films as whole days, for any program that can show
        one. It holds titles and places, no clients and no money.
      </p>
      <form
        className={style.form}
        aria-label="Where my dates are written"
        onSubmit={(event) => {
          event.preventDefault();
          void keep();
        }}
      >
        <Field
          label="Folder"
          placeholder="/home/me/calendars"
          value={folder}
          onChange={setFolder}
          error={fieldTrouble(trouble, 'folder')}
          hint="Where kitbound.ics is written anew after every change."
        />
        <Tick checked={isOn} onChange={setOn}>
          my dates are written there
        </Tick>
        {trouble ? <TroubleNote trouble={trouble} /> : null}
        <div className={style.head}>
          <Button type="submit" isDisabled={running > 0}>
            {out.isOn ? 'Keep it so' : 'Write my dates'}
          </Button>
          {out.isOn && out.writtenAt ? (
            <span className={style.second}>{`${countInWords(out.events, 'event')}, written ${snapshotInWords(out.writtenAt)}`}</span>
          ) : null}
        </div>
      </form>
      {out.trouble ? <Wrong trouble={out.trouble} /> : null}
      {out.isOn ? <Feed out={out} /> : null}
    </>
  );
}

/** Off until it is asked for; its address is all that is needed to read the file, so it can be made worthless. */
function Feed({ out: { feed, version } }: { out: CalendarOut }) {
  const { running } = useDeeds();
  if (!feed)
    return (
      <div className={style.head}>
        <Button kind="quiet" isDisabled={running > 0} onPress={() => void deed(() => client.calendars.openFeed({ version }))}>
          Serve it on this computer too
        </Button>
        <span className={style.second}>For programs that want an address in place of a file.</span>
      </div>
    );
  const copy = async (): Promise<void> =>
    say((await copyText(feed.address)) ? 'The address is copied.' : 'Select the address and copy it by hand.');
  return (
    <div className={style.feed}>
      <p className={style.path}>{feed.address}</p>
      {feed.trouble ? <Wrong trouble={feed.trouble} /> : null}
      <p className={style.second}>
        It answers on this computer alone, while Kitbound runs. Whoever on it knows the address can read the file: closed, the address is
        worth nothing.
      </p>
      <div className={style.head}>
        <Button kind="quiet" onPress={() => void copy()}>
          Copy the address
        </Button>
        <Button kind="quiet" isDisabled={running > 0} onPress={() => void deed(() => client.calendars.closeFeed({ version }))}>
          Close it
        </Button>
      </div>
    </div>
  );
}

function Wrong({ trouble: { what, kept, todo } }: { trouble: NonNullable<CalendarOut['trouble']> }) {
  return (
    <p className={style.wrong}>
      <strong>{what}</strong> {kept} {todo}
    </p>
  );
}
