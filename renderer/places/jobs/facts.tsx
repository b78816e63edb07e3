import { z } from 'zod';
import type { Place, Role } from '../../../core/contract/parts.ts';
import { Role as Roles } from '../../../core/contract/parts.ts';
import { WallTimeError, instantOf, instantText } from '../../../core/time/read.ts';
import { wallInWords, zoneInWords } from '../../../core/words/dates.ts';
import { Choice } from '../../parts/choice.tsx';
import { Field } from '../../parts/field.tsx';
import { PlaceField, placeInWords } from '../../parts/place-field.tsx';
import { fieldTrouble } from '../../trouble.ts';
import { BudgetFact } from './budget-fact.tsx';
import { ClientFact } from './client-fact.tsx';
import { DaysFact } from './days-fact.tsx';
import { DeliverFact } from './deliver-fact.tsx';
import { Fact } from './fact.tsx';
import style from './facts.module.css';
import type { FactProps } from './change-job.ts';

const roleOptions = Roles.options.map((role) => ({ value: role, label: role }));
const nothing = (words = 'not known') => <span className={style.unknown}>{words}</span>;

/** What is known of the job, each changed in place; and what is asked. */
export function Facts(of: FactProps) {
  const { job, home } = of;
  return (
    <dl className={style.facts}>
      <DaysFact {...of} />
      <Fact<Place | null>
        label="Place"
        shown={job.place ? placeInWords(job.place) : nothing()}
        start={() => job.place}
        renderEditor={(place, change) => <PlaceField label="Place" bare value={place} onChange={change} />}
        read={(place) => ({ place })}
        settles={['place', 'country']}
        {...of}
      />
      <Fact<Role>
        label="Role"
        shown={job.role}
        start={() => job.role}
        renderEditor={(role, change) => <Choice label="Role" bare value={role} options={roleOptions} onChange={change} />}
        read={(role) => ({ role })}
        settles={['role']}
        {...of}
      />
      <Fact<string>
        label="Reply by"
        shown={
          job.replyBy
            ? `${wallInWords(job.replyBy.wall)}${job.replyBy.zone === home.zone ? '' : ` in ${zoneInWords(job.replyBy.zone)}`}`
            : nothing('not asked for')
        }
        start={() => job.replyBy?.wall ?? ''}
        renderEditor={(wall, change, trouble) => (
          <Field label="Reply by" bare type="datetime-local" value={wall} onChange={change} error={fieldTrouble(trouble, 'replyBy')} />
        )}
        read={(wall) => readMoment(wall, home.zone)}
        settles={['replyBy']}
        {...of}
      />
      <BudgetFact {...of} />
      <ClientFact job={job} />
      <Fact<{ organisation: string; name: string; email: string; phone: string }>
        label="Asked by"
        shown={
          [job.organisation, job.contact.name, job.contact.email, job.contact.phone].filter((part) => part !== '').join(', ') || nothing()
        }
        start={() => ({ organisation: job.organisation, ...job.contact })}
        renderEditor={(typed, change, trouble) => (
          <>
            <Field
              label="Organisation"
              value={typed.organisation}
              onChange={(organisation) => change({ ...typed, organisation })}
              error={fieldTrouble(trouble, 'organisation')}
            />
            <Field
              label="Name"
              value={typed.name}
              onChange={(name) => change({ ...typed, name })}
              error={fieldTrouble(trouble, 'contact.name')}
            />
            <Field
              label="Mail"
              value={typed.email}
              onChange={(email) => change({ ...typed, email })}
              error={fieldTrouble(trouble, 'contact.email')}
            />
            <Field
              label="Phone"
              value={typed.phone}
              onChange={(phone) => change({ ...typed, phone })}
              error={fieldTrouble(trouble, 'contact.phone')}
            />
          </>
        )}
        read={({ organisation, ...contact }) => ({ organisation, contact })}
        settles={['organisation', 'contactName', 'contactEmail', 'contactPhone']}
        {...of}
      />
      <DeliverFact {...of} />
      <Fact<string>
        label="Notes"
        shown={job.notes ? <span className={style.note}>{job.notes}</span> : nothing('none')}
        start={() => job.notes}
        renderEditor={(text, change, trouble) => (
          <Field label="Notes" bare rows={4} value={text} onChange={change} error={fieldTrouble(trouble, 'notes')} />
        )}
        read={(notes) => ({ notes })}
        {...of}
        locked={false}
      />
    </dl>
  );
}

const Wall = z.string().regex(/^\d{4}-\d\d-\d\dT\d\d:\d\d$/);

const momentTrouble = (what: string) => ({
  trouble: {
    what,
    kept: 'Nothing was changed.',
    todo: 'Give another time.',
    fields: [{ field: 'replyBy', sentence: 'cannot be placed on the clock of home' }],
  },
});

/** A wall time typed for home as a moment; empty is none. */
function readMoment(wall: string, zone: string) {
  if (wall === '') return { replyBy: null };
  if (!Wall.safeParse(wall).success) return momentTrouble('The date and time are not whole.');
  try {
    return { replyBy: { wall, zone, at: instantText(instantOf(wall, zone).epochMilliseconds) } };
  } catch (error) {
    if (error instanceof WallTimeError) return momentTrouble(error.message);
    throw error;
  }
}
