import type { JobDay } from '../../../core/contract/jobs.ts';
import { DayKind, type Place } from '../../../core/contract/parts.ts';
import { countInWords } from '../../../core/words/amounts.ts';
import { dateInWords, datesInWords, zoneInWords } from '../../../core/words/dates.ts';
import { Button } from '../../parts/button.tsx';
import { Choice } from '../../parts/choice.tsx';
import { Field } from '../../parts/field.tsx';
import { fieldTrouble } from '../../trouble.ts';
import { Fact } from './fact.tsx';
import type { FactProps } from './change-job.ts';
import style from './facts.module.css';
import { following, readDays, typedDay, type TypedDay } from './typed-days.ts';

const kindOptions = DayKind.options.map((kind) => ({ value: kind, label: kind }));
/** Dates with call and wrap, at the place. A wrap before its call is on the next date. */
export function DaysFact(of: FactProps) {
  const { job, home } = of;
  return (
    <Fact<TypedDay[]>
      label="Days"
      shown={job.days.length > 0 ? <DaysShown days={job.days} place={job.place} /> : <span className={style.unknown}>not known</span>}
      start={() => (job.days.length > 0 ? job.days.map(typedDay) : [following([], home)])}
      renderEditor={(days, change, trouble) => (
        <div className={style.days}>
          <div className={`${style.day} ${style.dayHeads}`} aria-hidden>
            <span>Date</span>
            <span>Kind</span>
            <span>Call</span>
            <span>Wrap</span>
          </div>
          {days.map((day, at) => {
            const set = (part: Partial<TypedDay>): void => change(days.map((each, index) => (index === at ? { ...each, ...part } : each)));
            const label = `Day ${at + 1}`;
            return (
              <div key={`day ${at + 1}`} className={style.day}>
                <Field
                  label={`${label}: date`}
                  bare
                  type="date"
                  value={day.date}
                  onChange={(date) => set({ date })}
                  error={fieldTrouble(trouble, `days[${at}].date`)}
                />
                <Choice label={`${label}: kind`} bare value={day.kind} options={kindOptions} onChange={(kind) => set({ kind })} />
                <Field
                  label={`${label}: call`}
                  bare
                  figures
                  value={day.call}
                  onChange={(call) => set({ call })}
                  error={fieldTrouble(trouble, `days[${at}].call`)}
                />
                <Field
                  label={`${label}: wrap`}
                  bare
                  figures
                  value={day.wrap}
                  onChange={(wrap) => set({ wrap })}
                  error={fieldTrouble(trouble, `days[${at}].wrap`)}
                />
                <Button kind="quiet" onPress={() => change(days.filter((_, index) => index !== at))} aria-label={`Take out day ${at + 1}`}>
                  Take out
                </Button>
              </div>
            );
          })}
          <p className={style.second}>Call and wrap are times at the place; a wrap before its call is on the next date.</p>
          <div>
            <Button kind="quiet" onPress={() => change([...days, following(days, home)])}>
              One more day
            </Button>
          </div>
        </div>
      )}
      read={readDays}
      settles={['start', 'end', 'firstCall', 'lastWrap', 'days']}
      {...of}
    />
  );
}

const MOST_LINES = 4;

const alike = (day: JobDay): string => `${day.kind} ${day.call.slice(11)} to ${day.wrap.slice(11)}`;

function DaysShown({ days, place }: { days: readonly JobDay[]; place: Place | null }) {
  const groups = [...Map.groupBy(days, alike)];
  return (
    <>
      {groups.slice(0, MOST_LINES).map(([hours, same]) => (
        <span key={hours} className={style.group}>
          {datesInWords(same.map((day) => day.date))} <span className={style.second}>{hours}</span>
        </span>
      ))}
      {groups.length > MOST_LINES ? (
        <span className={style.group}>
          <span
            className={style.second}
          >{`and ${countInWords(groups.length - MOST_LINES, 'more kind')} of day, the last on ${dateInWords(days.at(-1)?.date ?? '')}`}</span>
        </span>
      ) : null}
      {place ? <span className={`${style.group} ${style.second}`}>{`by the clock of ${zoneInWords(place.zone)}`}</span> : null}
    </>
  );
}
