import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { editingAhead } from '../../../core/deliverables/ahead.ts';
import { formatMoney } from '../../../core/money/format.ts';
import { ask } from '../../ask.ts';
import { Asked } from '../../parts/asked.tsx';
import { Stringline } from '../../parts/stringline/stringline.tsx';
import { Welcome } from '../setup/welcome.tsx';
import { Clocks } from './clocks.tsx';
import style from './desk.module.css';
import { Lines } from './lines.tsx';
import { MoneyFigures } from './money-figures.tsx';
import { PasteBox } from './paste-box.tsx';
import { SampleLine } from './sample-line.tsx';

/** The Desk: what bites next? Before the first set-up it leads through that. */
export function DeskPlace() {
  const setup = useQuery(ask.setup.get.queryOptions({ input: {} }));
  const rates = useQuery(ask.rates.list.queryOptions({ input: {} }));
  return (
    <Asked asked={setup}>
      {({ setup: mine }) => (
        <Asked asked={rates}>{({ cards }) => (mine && cards.length > 0 ? <Desk unit={mine.distance} /> : <Welcome setup={mine} />)}</Asked>
      )}
    </Asked>
  );
}

const A_MINUTE = 60_000;

function Desk({ unit }: { unit: 'mi' | 'km' }) {
  const asked = useQuery(ask.desk.see.queryOptions({ input: {}, refetchInterval: A_MINUTE }));
  const [hasText, setHasText] = useState(false);
  return (
    <div className={style.desk}>
      <h1 className="reader">Desk</h1>
      <div className={style.left}>
        <PasteBox onText={setHasText} />
        <Asked asked={asked}>
          {({ clocks, lines, now }) => (
            <>
              <Lines lines={lines} />
              <Clocks clocks={clocks} now={now} quiet={hasText} />
            </>
          )}
        </Asked>
      </div>
      <div className={style.right}>
        {asked.data?.stringline ? (
          <section className={style.part}>
            <div className={style.headed}>
              <h2>Next fourteen days</h2>
              <a href="#/cannot-come">I cannot come</a>
            </div>
            <Stringline data={asked.data.stringline} unit={unit} />
            <EditingAhead />
            <p className={style.second}>Height is distance from home; a block is paid time, dashes are pencil.</p>
            {asked.data.stringline.clashes.length > 0 ? (
              <ul className={style.clashes}>
                {asked.data.stringline.clashes.slice(0, 2).map((clash) => (
                  <li key={clash.start}>{clash.sentence}</li>
                ))}
              </ul>
            ) : null}
          </section>
        ) : null}
        {asked.data?.month ? (
          <section className={style.part}>
            <h2>{asked.data.month.label}</h2>
            <dl className={style.figures}>
              <dt>Inked</dt>
              <dd className={style.strong}>{formatMoney(asked.data.month.inked, { code: true })}</dd>
              <dt>In pencil</dt>
              <dd>{formatMoney(asked.data.month.pencilled, { code: true })}</dd>
              <MoneyFigures {...asked.data.month} />
            </dl>
          </section>
        ) : null}
        <SampleLine />
      </div>
    </div>
  );
}

/** The editing that is planned next; all of it stands on the Road. */
function EditingAhead() {
  const plan = useQuery(ask.deliverables.plan.queryOptions({ input: {} })).data?.plan;
  const ahead = plan ? editingAhead(plan, 1) : '';
  if (ahead === '') return null;
  return (
    <p className={style.second}>
      <a href="#/road">Editing</a> {ahead}
    </p>
  );
}
