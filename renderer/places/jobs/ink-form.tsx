import { useMemo, useState } from 'react';
import type { Job } from '../../../core/contract/jobs.ts';
import type { Place } from '../../../core/contract/parts.ts';
import type { QuoteVersion } from '../../../core/contract/quotes.ts';
import { formatMoney } from '../../../core/money/format.ts';
import { takenOffer } from '../../../core/quotes/agreed.ts';
import { zoneInWords } from '../../../core/words/dates.ts';
import { ink } from '../../actions/ink.ts';
import { ActionButton } from '../../parts/action-button.tsx';
import { Choice } from '../../parts/choice.tsx';
import { Field } from '../../parts/field.tsx';
import { typedMoment } from '../../parts/typed-moment.ts';
import { useScenePart } from '../../scene.ts';
import style from './quote.module.css';

type Props = { job: Job; versions: readonly QuoteVersion[]; home: Place; black: boolean };

/** The written yes: who said it, when and how, and to which offer of which version. */
export function InkForm({ job, versions, home, black }: Props) {
  const [who, setWho] = useState(job.contact.name);
  const [how, setHow] = useState('mail');
  const [when, setWhen] = useState('');
  const [number, setNumber] = useState(versions[0]?.number ?? 1);
  const [offer, setOffer] = useState<number | null>(null);
  const draft = versions.find((version) => version.number === number)?.draft;
  const offers = draft?.offers ?? [];
  const usual = takenOffer(offers, undefined);
  const taken = offer ?? (typeof usual === 'number' ? usual : null);
  const open = offers.length > 0 && taken === null;
  const moment = typedMoment(when, home.zone);
  useYes(who, moment.ok ? moment.value : undefined, how, number, taken, open || !moment.ok);
  return (
    <div className={style.inside}>
      <h2>They said yes</h2>
      <div className={style.edit}>
        <Field label="Who" value={who} onChange={setWho} />
        <Field label="How" value={how} onChange={setHow} />
        <Field
          label="When"
          type="datetime-local"
          value={when}
          onChange={setWhen}
          error={moment.ok ? undefined : `was not read: ${moment.sentence}`}
          hint={`By the clock of ${zoneInWords(home.zone)}; empty: now.`}
        />
        {versions.length > 1 ? (
          <Choice
            label="To which version"
            value={String(number)}
            options={versions.map((version) => ({ value: String(version.number), label: `Version ${version.number}` }))}
            onChange={(next) => {
              setNumber(Number(next));
              setOffer(null);
            }}
          />
        ) : null}
        {offers.length > 0 ? (
          <Choice
            label="To which offer"
            value={String(taken ?? '')}
            options={[
              ...(open ? [{ value: '', label: 'say which' }] : []),
              ...offers.map((each) => ({
                value: String(each.number),
                label: `${each.number}. ${each.name}, ${formatMoney(each.totals.gross, { code: true })}`,
              })),
            ]}
            onChange={(next) => setOffer(next === '' ? null : Number(next))}
          />
        ) : null}
      </div>
      <div className={style.buttons}>
        <ActionButton action={ink} kind={black ? 'black' : 'plain'} />
      </div>
    </div>
  );
}

/** Put the yes as it is typed on the scene, where the action that inks reads it. */
function useYes(who: string, at: string | undefined, how: string, quoteVersion: number, offer: number | null, open: boolean): void {
  const yes = useMemo(() => ({ who, at, how, quoteVersion, offer, open }), [who, at, how, quoteVersion, offer, open]);
  useScenePart('yes', yes);
}

/** What was said yes to, in words that follow "to". */
export function inkedTo({ ink: yes }: Job, versions: readonly QuoteVersion[]): string {
  if (!yes?.quoteVersion) return '';
  const made = versions.find((version) => version.number === yes.quoteVersion);
  const offer = made?.draft.offers.find(({ number }) => number === yes.offer);
  const total = offer?.totals.gross ?? made?.draft.totals.gross;
  return [
    ` to version ${yes.quoteVersion}`,
    offer ? `, offer ${offer.number} "${offer.name}"` : '',
    total ? `: ${formatMoney(total, { code: true })}` : '',
  ].join('');
}
