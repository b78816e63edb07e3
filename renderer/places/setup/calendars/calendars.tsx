import { useQuery } from '@tanstack/react-query';
import { ask } from '../../../ask.ts';
import { Button } from '../../../parts/button.tsx';
import { useOneOpen } from '../../../parts/use-one-open.ts';
import { CalendarForm } from './calendar-form.tsx';
import { CalendarRow } from './calendar-row.tsx';
import style from './calendars.module.css';
import { OwnDates } from './own-dates.tsx';

/** Calendars of other programs that count as busy, and where my own dates are written for them. @param zone of home */
export function Calendars({ zone }: { zone: string }) {
  const [editing, setEditing, close] = useOneOpen<string>();
  const { data } = useQuery(ask.calendars.list.queryOptions({ input: {} }));
  if (!data) return null;
  const { calendars, out } = data;
  return (
    <section className={style.page} aria-labelledby="calendars">
      <div className={style.part}>
        <h2 id="calendars">Calendars</h2>
        {calendars.length === 0 ? (
          <p className={style.second}>
            None yet. A calendar that another program saves as a file counts as busy in every answer. Nothing is fetched from the net.
          </p>
        ) : (
          <ul className={style.list}>
            {calendars.map((calendar) => (
              <li key={calendar.id} className={style.item}>
                {editing === calendar.id ? (
                  <CalendarForm zone={zone} stored={calendar} onDone={close} />
                ) : (
                  <CalendarRow calendar={calendar} onChange={() => setEditing(calendar.id)} />
                )}
              </li>
            ))}
          </ul>
        )}
        {editing === NEW ? (
          <CalendarForm zone={zone} onDone={close} />
        ) : (
          <div>
            <Button onPress={() => setEditing(NEW)}>Add a calendar</Button>
          </div>
        )}
      </div>
      <div className={style.part}>
        <h2>My dates in other programs</h2>
        <OwnDates key={out.version} out={out} />
      </div>
    </section>
  );
}

const NEW = 'new';
