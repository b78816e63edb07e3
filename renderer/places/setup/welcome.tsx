import { useQuery } from '@tanstack/react-query';
import type { RateCardFields } from '../../../core/contract/rates.ts';
import type { Setup } from '../../../core/contract/setup.ts';
import { dateIn } from '../../../core/time/wall.ts';
import { ask } from '../../ask.ts';
import { Asked } from '../../parts/asked.tsx';
import { Button } from '../../parts/button.tsx';
import { Choice } from '../../parts/choice.tsx';
import { Fold } from '../../parts/fold.tsx';
import { TroubleNote } from '../../parts/trouble-note.tsx';
import { CardField, Overtime, roleOptions, RushAndEditing, TheDay, TravelAndKit } from '../rates/card-fields.tsx';
import { TermsFields } from '../rates/terms-fields.tsx';
import { useCardForm } from '../rates/use-card-form.ts';
import { Taxes, Units, WhoAndWhere } from './identity-fields.tsx';
import { SampleOffer } from './sample-offer.tsx';
import { useSetupForm } from './use-setup-form.ts';
import style from './welcome.module.css';

/** The first start: two short steps, then the Desk. */
export function Welcome({ setup }: { setup: Setup | null }) {
  return (
    <div className={style.page}>
      <div className={style.step}>{setup ? <RateStep setup={setup} /> : <DetailsStep />}</div>
      <aside className={style.aside} aria-label="How it goes">
        <ol className={style.how}>
          <li>
            <strong>Paste</strong> an inquiry as it came. Dates, place, role and reply-by are read from it and shown beside their words.
          </li>
          <li>
            <strong>Read the answer:</strong> free, free if, or not possible, with the hours that decide it and what would lift it.
          </li>
          <li>
            <strong>Make the quote.</strong> It stands ready from your rate card; one action writes the PDF and the reply, and pencils the
            dates.
          </li>
        </ol>
        <p className={style.second}>
          Everything stays on this computer. Nothing is sent anywhere, and all of it can be changed later under Setup and Rates.
        </p>
        {setup ? null : <SampleOffer />}
      </aside>
    </div>
  );
}

function DetailsStep() {
  const form = useSetupForm(null);
  return (
    <form
      className={style.form}
      onSubmit={(event) => {
        event.preventDefault();
        void form.save();
      }}
    >
      <p className={style.second}>First of two short steps</p>
      <h1>Who sends the quotes, and where is home?</h1>
      <WhoAndWhere {...form} first />
      {form.typed.home ? <Units {...form} /> : null}
      <Taxes {...form} />
      {form.trouble ? <TroubleNote trouble={form.trouble} /> : null}
      <div>
        <Button kind="black" type="submit">
          Next: what a day costs
        </Button>
      </div>
    </form>
  );
}

function RateStep({ setup }: { setup: Setup }) {
  const validFrom = dateIn(setup.home.zone, Temporal.Now.instant().epochMilliseconds);
  const asked = useQuery(
    ask.rates.defaults.queryOptions({ input: { role: 'shoot', currency: setup.currency, validFrom }, staleTime: Number.POSITIVE_INFINITY }),
  );
  return <Asked asked={asked}>{({ fields }) => <RateForm fields={fields} />}</Asked>;
}

function RateForm({ fields }: { fields: RateCardFields }) {
  const form = useCardForm(fields);
  return (
    <form
      className={style.form}
      onSubmit={(event) => {
        event.preventDefault();
        void form.save();
      }}
    >
      <p className={style.second}>Second of two short steps</p>
      <h1>What does a day of yours cost?</h1>
      <div className={style.two}>
        <Choice
          label="Role you are hired for most"
          value={form.typed.role}
          options={roleOptions}
          onChange={(role) => form.change({ role })}
        />
        <CardField form={form} name="dayRate" label="A day" unit={form.typed.currency} />
      </div>
      <Fold title="Everything else is filled with the defaults of the trade: look, or leave it">
        <div className={style.defaults}>
          <h2>The day</h2>
          <TheDay form={form} rate={false} />
          <h2>Overtime and turnaround</h2>
          <Overtime form={form} />
          <h2>Rush and editing</h2>
          <RushAndEditing form={form} />
          <h2>Travel and kit</h2>
          <TravelAndKit form={form} />
          <h2>Terms</h2>
          <TermsFields terms={form.typed.terms} onChange={(terms) => form.change({ terms })} trouble={form.trouble} />
        </div>
      </Fold>
      {form.trouble ? <TroubleNote trouble={form.trouble} /> : null}
      <div>
        <Button kind="black" type="submit">
          Open the Desk
        </Button>
      </div>
    </form>
  );
}
