import { useQuery } from '@tanstack/react-query';
import type { Setup } from '../../../core/contract/setup.ts';
import { ask } from '../../ask.ts';
import { say } from '../../deeds.ts';
import { Asked } from '../../parts/asked.tsx';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { TroubleNote } from '../../parts/trouble-note.tsx';
import { fieldTrouble } from '../../trouble.ts';
import { Calendars } from './calendars/calendars.tsx';
import { Cautions } from './cautions.tsx';
import { Taxes, Units, WhoAndWhere } from './identity-fields.tsx';
import { EditingFields } from './editing-fields.tsx';
import { Documents } from './documents/documents.tsx';
import { InvoiceFields } from './invoice-fields.tsx';
import { PapersFields } from './papers-fields.tsx';
import { ScreenChoices } from './screen-choices.tsx';
import style from './setup.module.css';
import { StoreState } from './store-state.tsx';
import { TermsField } from './terms-field.tsx';
import { useSetupForm } from './use-setup-form.ts';
import { YearFields } from './year-fields.tsx';

/** Setup: my details, my year, the store and this screen. */
export function SetupPlace() {
  const asked = useQuery(ask.setup.get.queryOptions({ input: {} }));
  return (
    <Asked asked={asked}>
      {({ setup }) => (
        <div className={style.page}>
          <h1 className="reader">Setup</h1>
          <SetupSheet key={setup?.version ?? 0} stored={setup} />
          <Beside stored={setup} />
        </div>
      )}
    </Asked>
  );
}

function SetupSheet({ stored }: { stored: Setup | null }) {
  const form = useSetupForm(stored);
  const { typed, change, trouble } = form;
  return (
    <form
      className={style.column}
      onSubmit={(event) => {
        event.preventDefault();
        void form.save().then((saved) => saved && say('Saved. New quotes use it; made versions stay as they are.'));
      }}
    >
      <section className={style.part}>
        <h2>My details</h2>
        <WhoAndWhere {...form} />
        <Field
          label="Address on papers"
          rows={3}
          value={typed.address}
          onChange={(address) => change({ address })}
          error={fieldTrouble(trouble, 'address')}
        />
        <div className={style.two}>
          <Field label="Mail" value={typed.email} onChange={(email) => change({ email })} error={fieldTrouble(trouble, 'email')} />
          <Field label="Phone" value={typed.phone} onChange={(phone) => change({ phone })} error={fieldTrouble(trouble, 'phone')} />
        </div>
        <Units {...form} />
        <Taxes {...form} />
      </section>
      <section className={style.part}>
        <h2>My papers</h2>
        <PapersFields {...form} />
      </section>
      <section className={style.part}>
        <h2>My invoices</h2>
        <InvoiceFields {...form} />
      </section>
      <section className={style.part}>
        <h2>My terms</h2>
        <TermsField {...form} />
      </section>
      <section className={style.part}>
        <h2>Rest and my year</h2>
        <div className={style.two}>
          <Field
            label="Unbroken rest between two jobs"
            unit="hours"
            figures
            inputMode="decimal"
            value={typed.restHours}
            onChange={(restHours) => change({ restHours })}
            error={fieldTrouble(trouble, 'restHours')}
          />
        </div>
        <YearFields {...form} />
      </section>
      <section className={style.part}>
        <h2>When I edit</h2>
        <EditingFields {...form} />
      </section>
      {trouble ? <TroubleNote trouble={trouble} /> : null}
      <div className={style.row}>
        <Button kind="black" type="submit">
          Save
        </Button>
      </div>
    </form>
  );
}

/** What is kept by itself, beside the sheet that is saved as one. */
function Beside({ stored }: { stored: Setup | null }) {
  return (
    <div className={style.column}>
      {stored ? (
        <section className={style.part}>
          <h2>Documents</h2>
          <Documents zone={stored.home.zone} />
        </section>
      ) : null}
      {stored ? <Calendars zone={stored.home.zone} /> : null}
      <section className={style.part}>
        <h2>The store</h2>
        <StoreState />
      </section>
      <section className={style.part}>
        <h2>This screen</h2>
        <ScreenChoices />
      </section>
      <section className={style.part}>
        <h2>Cautions</h2>
        <Cautions />
      </section>
    </div>
  );
}
