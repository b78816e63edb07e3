import type { Trouble } from '../../../core/contract/base.ts';
import type { Edit } from '../../../core/contract/jobs.ts';
import { editsOf } from '../../../core/jobs/edits.ts';
import { formatNumber } from '../../../core/money/format.ts';
import { parseQuantity } from '../../../core/money/parse.ts';
import { dateInWords } from '../../../core/words/dates.ts';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { Reader } from '../../parts/reader.ts';
import { fieldTrouble } from '../../trouble.ts';
import type { FactProps } from './change-job.ts';
import { HoursHint } from './edits/hours-hint.tsx';
import { Fact } from './fact.tsx';
import style from './facts.module.css';
import quote from './quote.module.css';

type Typed = { what: string; due: string; hours: string };
const blank: Typed = { what: '', due: '', hours: '' };

/** What is to be handed over, by when, and the edit hours that it takes. */
export function DeliverFact(props: FactProps) {
  const edits = editsOf(props.job);
  return (
    <Fact<Typed[]>
      label="To deliver"
      shown={
        edits.length > 0 ? (
          edits.map((edit, order) => (
            <span key={`${order} ${edit.what}`} className={style.group}>
              {edit.what} <span className={style.second}>{knownInWords(edit)}</span>
            </span>
          ))
        ) : (
          <span className={style.unknown}>nothing asked for</span>
        )
      }
      start={() => (edits.length > 0 ? edits.map(({ what, due, hours }) => ({ what, due: due ?? '', hours: hours ?? '' })) : [blank])}
      renderEditor={(rows, change, trouble) => (
        <>
          {rows.map((row, at) => (
            <Thing
              key={`row ${at + 1}`}
              row={row}
              at={at}
              trouble={trouble}
              onChange={(part) => change(rows.with(at, { ...row, ...part }))}
              onOut={() => change(rows.filter((_, index) => index !== at))}
            />
          ))}
          <div>
            <Button kind="quiet" onPress={() => change([...rows, blank])}>
              One more
            </Button>
          </div>
        </>
      )}
      read={readEdits}
      settles={['deliverables']}
      {...props}
    />
  );
}

type ThingProps = { row: Typed; at: number; trouble: Trouble | null; onChange: (part: Partial<Typed>) => void; onOut: () => void };

/** One thing to deliver: what it is over the whole width, its date and hours below. */
function Thing({ row, at, trouble, onChange, onOut }: ThingProps) {
  const wrong = (key: keyof Typed): string | undefined => fieldTrouble(trouble, `edits[${at}].${key}`);
  return (
    <div role="group" aria-label={`Thing ${at + 1} to deliver`} className={quote.edit}>
      <div className={quote.whole}>
        <Field
          label="What"
          value={row.what}
          onChange={(what) => onChange({ what })}
          error={wrong('what') ?? fieldTrouble(trouble, `deliverables[${at}]`)}
        />
      </div>
      <Field label="Due" type="date" value={row.due} onChange={(due) => onChange({ due })} error={wrong('due')} />
      <Field
        label="Edit hours"
        figures
        inputMode="decimal"
        value={row.hours}
        onChange={(hours) => onChange({ hours })}
        error={wrong('hours')}
      />
      <div className={quote.whole}>
        <HoursHint words={row.what} onTake={(hours) => onChange({ hours })} />
      </div>
      <div className={quote.whole}>
        <span>
          <Button kind="quiet" onPress={onOut} aria-label={`Take out thing ${at + 1}`}>
            Take out
          </Button>
        </span>
      </div>
    </div>
  );
}

const knownInWords = ({ due, hours }: Edit): string =>
  [due ? `due ${dateInWords(due)}` : '', hours ? `${formatNumber(hours)} h of editing` : ''].filter((part) => part !== '').join(', ');

/** Rows left wholly empty are dropped. */
function readEdits(rows: readonly Typed[]) {
  const reader = new Reader();
  const edits = rows.flatMap(({ what, due, hours }, at): Edit[] => {
    if (`${what}${due}${hours}`.trim() === '') return [];
    if (what.trim() === '') reader.refuse(`edits[${at}].what`, 'is missing; say what is due');
    const read = hours.trim() === '' ? null : reader.take(`edits[${at}].hours`, parseQuantity(hours, 'hours'));
    if (read?.startsWith('-')) reader.refuse(`edits[${at}].hours`, 'is below zero; give zero or more');
    return [{ what: what.trim(), due: due || null, hours: read ?? null }];
  });
  return reader.trouble ? { trouble: reader.trouble } : { deliverables: edits.map(({ what }) => what), edits };
}
