import { useQuery } from '@tanstack/react-query';
import type { Job } from '../../../../core/contract/jobs.ts';
import type { Knows } from '../../../../core/contract/knows.ts';
import type { Place } from '../../../../core/contract/parts.ts';
import { formatMoney } from '../../../../core/money/format.ts';
import { dateIn } from '../../../../core/time/wall.ts';
import { dateInWords } from '../../../../core/words/dates.ts';
import { ask } from '../../../ask.ts';
import { deed, say, useDeeds } from '../../../deeds.ts';
import { client } from '../../../door.ts';
import { Button } from '../../../parts/button.tsx';
import { copyText } from '../../../parts/copy.ts';
import { sayWithUndo } from '../../../undo.ts';
import { newestJob } from '../change-job.ts';
import style from './papers.module.css';

type Insurance = Knows['insurance'];

/** The insurance certificate that the client asks for: what it must say, what does not fit, and its way to the insurer and back. */
export function Certificate({ job, home }: { job: Job; home: Place }) {
  const { running } = useDeeds();
  const said = useQuery(ask.documents.certificate.queryOptions({ input: { jobId: job.id } })).data;
  const { insurance } = job.knows;
  const today = dateIn(home.zone, Temporal.Now.instant().epochMilliseconds);

  const keep = (part: Partial<Insurance>): Promise<unknown> => {
    const now = newestJob(job);
    const knows = { ...now.knows, insurance: { ...now.knows.insurance, ...part } };
    return client.jobs.saveKnows({ id: job.id, version: now.version, knows, key: crypto.randomUUID() });
  };
  const askInsurer = async (): Promise<void> => {
    if (!said) return;
    const copied = await copyText(said.text.text);
    const { askedOn } = insurance;
    if (!(await deed(() => keep({ askedOn: today })))) return;
    const words = copied ? 'Copied. Paste it into a mail to your insurer.' : `The clipboard refused. Your message: ${said.text.text}`;
    sayWithUndo(words, 'Not asked yet', () => keep({ askedOn }), 'It is not asked yet.');
  };
  const noteSent = async (): Promise<void> => {
    if (await deed(() => keep({ sentOn: today })))
      sayWithUndo('The certificate is noted as sent.', 'Undo', () => keep({ sentOn: null }), 'It is not sent yet.');
  };
  return (
    <div className={style.part} role="group" aria-labelledby="certificate">
      <h3 id="certificate">Insurance certificate</h3>
      <dl className={style.facts}>
        {factsOf(insurance).map(({ label, text }) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
      {insurance.sentOn === null
        ? said?.troubles.map((trouble) => (
            <p key={trouble} className={style.broken}>
              {trouble}
            </p>
          ))
        : null}
      {insurance.sentOn === null ? (
        <div className={style.buttons}>
          <Button isDisabled={running > 0 || !said} onPress={() => void askInsurer()}>
            {insurance.askedOn === null ? 'Copy a message to the insurer' : 'Copy the message again'}
          </Button>
          <Button isDisabled={running > 0} onPress={() => void noteSent()}>
            It is sent to the client
          </Button>
        </div>
      ) : (
        <div className={style.buttons}>
          <Button
            kind="quiet"
            isDisabled={running > 0}
            onPress={() => void deed(() => keep({ sentOn: null })).then((done) => done && say('It is not sent yet.'))}
          >
            It was not sent
          </Button>
        </div>
      )}
    </div>
  );
}

function factsOf({ named, limit, due, askedOn, sentOn, detail }: Insurance): { label: string; text: string }[] {
  return [
    { label: 'Names on it', text: named || 'not noted' },
    { label: 'Limit at least', text: limit ? formatMoney(limit, { code: true }) : '' },
    { label: 'Must also say', text: detail.trim() },
    { label: 'Due', text: due ? dateInWords(due) : 'by first call' },
    { label: 'Insurer', text: askedOn ? `asked ${dateInWords(askedOn)}` : 'not asked yet' },
    { label: 'Client', text: sentOn ? `sent ${dateInWords(sentOn)}` : 'not sent yet' },
  ].filter(({ text }) => text !== '');
}
