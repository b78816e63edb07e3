import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { LedgerSeen } from '../../../core/contract/ledger.ts';
import { expectedSoon } from '../../../core/ledger/expected.ts';
import { isDate } from '../../../core/time/read.ts';
import { countInWords } from '../../../core/words/amounts.ts';
import { ask } from '../../ask.ts';
import { Asked } from '../../parts/asked.tsx';
import { Field } from '../../parts/field.tsx';
import { Ageing, ClientsOwing } from './ageing.tsx';
import { SumText } from './amounts.tsx';
import { Expected } from './expected.tsx';
import style from './ledger.module.css';
import { Papers } from './papers.tsx';

/** Who owes me, as of today or of any date. */
export function Owed() {
  const [typed, setTyped] = useState('');
  const asOf = isDate(typed) ? { asOf: typed } : {};
  const asked = useQuery(ask.ledger.see.queryOptions({ input: asOf, placeholderData: keepPreviousData }));
  return (
    <Asked asked={asked}>
      {(seen) => (
        <>
          <Top seen={seen} />
          <div className={style.two}>
            <div className={style.column}>
              <Papers seen={seen} given={asOf}>
                <div className={style.date}>
                  <Field label="As of" type="date" value={typed || seen.asOf} onChange={setTyped} />
                </div>
              </Papers>
            </div>
            <div className={style.column}>
              <Ageing seen={seen} />
              <ClientsOwing seen={seen} />
              <Expected seen={seen} />
            </div>
          </div>
        </>
      )}
    </Asked>
  );
}

function Top({ seen }: { seen: LedgerSeen }) {
  const { open, openCount, late, lateCount, disputed, expected, asOf, home } = seen;
  return (
    <dl className={style.top}>
      <div className={style.figure}>
        <dt>{`Owed to me, ${home}`}</dt>
        <dd>
          <SumText sum={open} currency={home} />
        </dd>
        <dd className={style.second}>{countInWords(openCount, 'open invoice')}</dd>
      </div>
      <div className={style.figure}>
        <dt>Of that late</dt>
        <dd className={lateCount > 0 ? style.late : undefined}>
          <SumText sum={late} currency={home} />
        </dd>
        <dd className={style.second}>
          {lateCount === 0 ? 'nothing is late' : countInWords(lateCount, 'invoice')}
          {disputed.by.length > 0 ? ', disputed ones among what is open' : ''}
        </dd>
      </div>
      <div className={style.figure}>
        <dt>Expected in the next four weeks</dt>
        <dd>
          <SumText sum={expectedSoon(expected, asOf, home)} currency={home} />
        </dd>
        <dd className={style.second}>bills falling due, and ink not billed yet</dd>
      </div>
    </dl>
  );
}
