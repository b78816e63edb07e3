import { useState } from 'react';
import type { Trouble } from '../../../core/contract/base.ts';
import type { JobHours, OvertimeAsk } from '../../../core/contract/hours.ts';
import type { Job } from '../../../core/contract/jobs.ts';
import { askInWords } from '../../../core/hours/overtime.ts';
import { parseLength } from '../../../core/money/parse.ts';
import { lengthInWords } from '../../../core/words/amounts.ts';
import { dateInWords } from '../../../core/words/dates.ts';
import { deed, useDeeds } from '../../deeds.ts';
import { client } from '../../door.ts';
import { Button } from '../../parts/button.tsx';
import { Choice } from '../../parts/choice.tsx';
import { EditorForm } from '../../parts/editor-form.tsx';
import { Field } from '../../parts/field.tsx';
import { TroubleNote } from '../../parts/trouble-note.tsx';
import { fieldTrouble } from '../../trouble.ts';
import { sayWithUndo } from '../../undo.ts';
import style from './hours.module.css';

/** Overtime: what was worked past the day, what was asked for, and who said yes or no, when and how. */
export function Overtime({ job, hours, locked }: { job: Job; hours: JobHours; locked: boolean }) {
  const [asking, setAsking] = useState(false);
  const { asks, overtime, zone, approver, days } = hours;
  const dates = [...new Set([...days.map(({ date }) => date), ...job.days.map(({ date }) => date)])].sort();
  const [latest] = days.map(({ date }) => date).slice(-1);
  return (
    <div>
      <div className={style.head}>
        <h3>Overtime</h3>
        {approver ? <span className={style.second}>{`May be approved by: ${approver}`}</span> : null}
        {locked || asking || dates.length === 0 ? null : (
          <Button kind="quiet" onPress={() => setAsking(true)}>
            Note that it was asked for
          </Button>
        )}
      </div>
      {overtime
        .filter(({ open }) => open > 0)
        .map(({ date, sentence }) => (
          <p key={date} className={style.broken}>
            {sentence}
          </p>
        ))}
      {asking ? <AskForm jobId={job.id} dates={dates} start={latest ?? dates[0] ?? ''} onDone={() => setAsking(false)} /> : null}
      <ul className={style.asks}>
        {asks.map((each) => (
          <AskRow key={each.id} ask={each} zone={zone} usual={job.knows.overtimeApprover} locked={locked} />
        ))}
      </ul>
    </div>
  );
}

function AskForm({ jobId, dates, start, onDone }: { jobId: string; dates: readonly string[]; start: string; onDone: () => void }) {
  const [date, setDate] = useState(start);
  const [length, setLength] = useState('1 h');
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const read = parseLength(length);
  const minutes = read.ok && 'minutes' in read.value ? read.value.minutes : null;
  const keep = async (): Promise<void> => {
    if (minutes === null) return;
    const kept = await deed(() => client.hours.ask({ jobId, date, minutes, key: crypto.randomUUID() }), setTrouble);
    if (!kept) return;
    onDone();
    const said = `${lengthInWords(minutes)} asked for ${dateInWords(date)}.`;
    sayWithUndo(said, 'Undo', () => client.hours.dropAsk({ id: kept.ask.id }), 'It is not asked for any more.');
  };
  return (
    <EditorForm label="Overtime asked for" className={style.fields} onKeep={() => void keep()} onLeave={onDone}>
      <Choice label="On" value={date} options={dates.map((each) => ({ value: each, label: dateInWords(each) }))} onChange={setDate} />
      <Field
        label="How long"
        value={length}
        onChange={setLength}
        error={minutes === null ? 'was not read; write it as 1 h 30 min' : fieldTrouble(trouble, 'minutes')}
      />
      {trouble ? <TroubleNote trouble={trouble} /> : null}
      <Button type="submit">Keep the ask</Button>
      <Button kind="quiet" onPress={onDone}>
        Leave it
      </Button>
    </EditorForm>
  );
}

function AskRow({ ask, zone, usual, locked }: { ask: OvertimeAsk; zone: string; usual: string; locked: boolean }) {
  const [answering, setAnswering] = useState(false);
  const { running } = useDeeds();
  const { id, state, date, minutes } = ask;
  const named = `${lengthInWords(minutes)} on ${dateInWords(date)}`;
  const back = state === 'asked' ? 'Take back' : 'Take the answer back';
  const takeBack = async (): Promise<void> => {
    if (state !== 'asked') return void (await deed(() => client.hours.openAsk({ id, key: crypto.randomUUID() })));
    const gone = await deed(() => client.hours.dropAsk({ id, key: crypto.randomUUID() }));
    const again = () => client.hours.ask({ jobId: ask.jobId, date, minutes });
    if (gone) sayWithUndo(`${named} is not asked for any more.`, 'Put it back', again, 'It is asked for again.');
  };
  return (
    <li>
      <span>{`${dateInWords(date)}: ${askInWords(ask, zone)}.`}</span>
      {locked || answering ? null : (
        <span className={style.buttons}>
          {state === 'asked' ? (
            <Button kind="quiet" onPress={() => setAnswering(true)} aria-label={`Note the answer to ${named}`}>
              Note the answer
            </Button>
          ) : null}
          <Button kind="quiet" isDisabled={running > 0} onPress={() => void takeBack()} aria-label={`${back}: ${named}`}>
            {back}
          </Button>
        </span>
      )}
      {answering ? <AnswerForm ask={ask} usual={usual} onDone={() => setAnswering(false)} /> : null}
    </li>
  );
}

function AnswerForm({ ask: { id }, usual, onDone }: { ask: OvertimeAsk; usual: string; onDone: () => void }) {
  const [who, setWho] = useState(usual);
  const [how, setHow] = useState('by word of mouth');
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const settle = async (approved: boolean): Promise<void> => {
    const kept = await deed(() => client.hours.settleAsk({ id, approved, who, how, key: crypto.randomUUID() }), setTrouble);
    if (!kept) return;
    onDone();
    const said = approved ? `${who} said yes.` : `${who} said no.`;
    sayWithUndo(said, 'Undo', () => client.hours.openAsk({ id }), 'The ask is open again.');
  };
  return (
    <EditorForm label="The answer to overtime" className={style.fields} onKeep={() => void settle(true)} onLeave={onDone}>
      <Field label="Who answered" value={who} onChange={setWho} error={fieldTrouble(trouble, 'who')} />
      <Field label="How" value={how} onChange={setHow} error={fieldTrouble(trouble, 'how')} />
      <Button type="submit">They said yes</Button>
      <Button onPress={() => void settle(false)}>They said no</Button>
      <Button kind="quiet" onPress={onDone}>
        Leave it
      </Button>
      {trouble ? <TroubleNote trouble={trouble} /> : null}
    </EditorForm>
  );
}
