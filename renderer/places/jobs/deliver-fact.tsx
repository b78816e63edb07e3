import type { Edit } from '../../../core/contract/jobs.ts';
import { editsOf } from '../../../core/jobs/edits.ts';
import { formatNumber } from '../../../core/money/format.ts';
import { parseQuantity } from '../../../core/money/parse.ts';
import { dateInWords } from '../../../core/words/dates.ts';
import { Reader } from '../../parts/reader.ts';
import { Rows } from '../../parts/rows.tsx';
import { fieldTrouble } from '../../trouble.ts';
import type { FactProps } from './change-job.ts';
import { Fact } from './fact.tsx';
import style from './facts.module.css';

type Typed = { what: string; due: string; hours: string };
const blank: Typed = { what: '', due: '', hours: '' };
const label = 'Things to deliver';

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
        <Rows
          label={label}
          columns={[
            { key: 'what', label: 'What' },
            { key: 'due', label: 'Due', type: 'date' },
            { key: 'hours', label: 'Edit hours', figures: true },
          ]}
          rows={rows}
          onChange={change}
          blank={blank}
          add="One more"
          error={(at, key) =>
            fieldTrouble(trouble, `edits[${at}].${key}`) ?? (key === 'what' ? fieldTrouble(trouble, `deliverables[${at}]`) : undefined)
          }
        />
      )}
      read={readEdits}
      settles={['deliverables']}
      {...props}
    />
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
