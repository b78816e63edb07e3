import { QueryClientProvider } from '@tanstack/react-query';
import { Route, Switch } from 'wouter';
import { useHashLocation } from 'wouter/use-hash-location';
import { queries } from './ask.ts';
import { Frame } from './frame.tsx';
import { Empty } from './parts/empty.tsx';
import { CannotComePlace } from './places/desk/cannot-come.tsx';
import { DeskPlace } from './places/desk/desk.tsx';
import { JobPlace } from './places/jobs/job.tsx';
import { JobsPlace } from './places/jobs/jobs.tsx';
import { BringKitPlace } from './places/kit/bring.tsx';
import { ItemPlace } from './places/kit/item-sheet.tsx';
import { KitPlace } from './places/kit/kit.tsx';
import { PresetPlace } from './places/kit/presets.tsx';
import { InvoicePlace } from './places/ledger/invoice.tsx';
import { LedgerPlace } from './places/ledger/ledger.tsx';
import { BringPlace } from './places/people/bring.tsx';
import { ClientPlace, NewClientPlace } from './places/people/client-sheet.tsx';
import { HandPlace, NewHandPlace } from './places/people/hand-sheet.tsx';
import { PeoplePlace } from './places/people/people.tsx';
import { TemplatePlace } from './places/rates/deliver/template-sheet.tsx';
import { CardPlace, RatesPlace } from './places/rates/rates.tsx';
import { RoadPlace } from './places/road/road.tsx';
import { DocumentPlace } from './places/setup/documents/document-sheet.tsx';
import { SetupPlace } from './places/setup/setup.tsx';

/** Every place and its address, which stands behind the # so that the page is loaded once. */
export function App() {
  const [path] = useHashLocation();
  return (
    <QueryClientProvider client={queries}>
      <Frame path={path}>
        <Switch location={path}>
          <Route path="/" component={DeskPlace} />
          <Route path="/cannot-come/:first?/:last?">
            {({ first, last }) => <CannotComePlace key={first} {...(first && last ? { first, last } : {})} />}
          </Route>
          <Route path="/road" component={RoadPlace} />
          <Route path="/jobs" component={JobsPlace} />
          <Route path="/jobs/:id">{({ id }) => <JobPlace key={id} id={id} />}</Route>
          <Route path="/people">
            <PeoplePlace list="clients" />
          </Route>
          <Route path="/people/hands">
            <PeoplePlace list="hands" />
          </Route>
          <Route path="/people/away">
            <PeoplePlace list="away" />
          </Route>
          <Route path="/people/bring" component={BringPlace} />
          <Route path="/people/new-client" component={NewClientPlace} />
          <Route path="/people/new-hand" component={NewHandPlace} />
          <Route path="/people/client/:id">{({ id }) => <ClientPlace key={id} id={id} />}</Route>
          <Route path="/people/hand/:id">{({ id }) => <HandPlace key={id} id={id} />}</Route>
          <Route path="/kit">
            <KitPlace list="things" />
          </Route>
          <Route path="/kit/presets">
            <KitPlace list="presets" />
          </Route>
          <Route path="/kit/bring" component={BringKitPlace} />
          <Route path="/kit/new">
            <ItemPlace />
          </Route>
          <Route path="/kit/new-preset">
            <PresetPlace />
          </Route>
          <Route path="/kit/thing/:id">{({ id }) => <ItemPlace key={id} id={id} />}</Route>
          <Route path="/kit/preset/:id">{({ id }) => <PresetPlace key={id} id={id} />}</Route>
          <Route path="/rates" component={RatesPlace} />
          <Route path="/rates/new-template">
            <TemplatePlace />
          </Route>
          <Route path="/rates/template/:id">{({ id }) => <TemplatePlace key={id} id={id} />}</Route>
          <Route path="/rates/:id">{({ id }) => <CardPlace key={id} id={id} />}</Route>
          <Route path="/ledger">
            <LedgerPlace page="owed" />
          </Route>
          <Route path="/ledger/earned">
            <LedgerPlace page="earned" />
          </Route>
          <Route path="/ledger/year">
            <LedgerPlace page="year" />
          </Route>
          <Route path="/ledger/logs">
            <LedgerPlace page="logs" />
          </Route>
          <Route path="/ledger/invoice/:id/:begin?">
            {({ id, begin }) => <InvoicePlace key={id} id={id} {...(begin ? { begin } : {})} />}
          </Route>
          <Route path="/setup" component={SetupPlace} />
          <Route path="/setup/document/new/:kind?">
            {({ kind }) => <DocumentPlace {...(kind ? { kind: decodeURIComponent(kind) } : {})} />}
          </Route>
          <Route path="/setup/document/:id">{({ id }) => <DocumentPlace key={id} id={id} />}</Route>
          <Route>
            <Empty title="Nothing at this address">Nothing was changed. Choose a place above.</Empty>
          </Route>
        </Switch>
      </Frame>
    </QueryClientProvider>
  );
}
