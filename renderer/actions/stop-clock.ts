import type { Clock } from '../../core/contract/desk.ts';
import { sceneNow } from '../scene.ts';
import { pencilDates } from './renew.ts';

type Stop = { label: string; perform: (clock: Clock) => void | Promise<unknown> };
const openJob = ({ jobId }: Clock): void => sceneNow().go(jobId === null ? '/' : `/jobs/${jobId}`);
const openDocument = ({ id }: Clock): void => sceneNow().go(`/setup/document/${id.replace(/^document:/, '')}`);

const openInvoice =
  (begin: 'pay' | 'remind') =>
  ({ invoiceId }: Clock): void =>
    sceneNow().go(`/ledger/invoice/${invoiceId ?? ''}/${begin}`);

const stops = new Map<string, Stop>([
  ['answer', { label: 'Open the answer', perform: openJob }],
  ['ask-or-let-go', { label: 'Ask or let go', perform: openJob }],
  [
    'renew',
    { label: 'Renew the pencil', perform: ({ jobId, jobVersion }) => (jobId === null ? undefined : pencilDates(jobId, jobVersion)) },
  ],
  ['bill-deposit', { label: 'Bill it', perform: openJob }],
  ['bill', { label: 'Draft it', perform: openJob }],
  ['enter-hours', { label: 'Enter hours', perform: openJob }],
  ['pay-hand', { label: 'Note it as paid', perform: openJob }],
  ['notes', { label: 'Take notes in', perform: openJob }],
  ['leg', { label: 'Open the trip', perform: openJob }],
  ['edit', { label: 'Open the edits', perform: openJob }],
  ['approval', { label: 'Note the yes', perform: openJob }],
  ['originals', { label: 'Look at the originals', perform: openJob }],
  ['document', { label: 'Open the document', perform: openDocument }],
  ['papers', { label: 'Open its papers', perform: openJob }],
  ['certificate', { label: 'Ask or note it sent', perform: openJob }],
  ['open-invoice', { label: 'Record a payment', perform: openInvoice('pay') }],
  ['remind', { label: 'Remind them', perform: openInvoice('remind') }],
]);
const open: Stop = { label: 'Open the job', perform: openJob };

/** The action that stops a clock of the Desk, by the name that the clock gives. */
export const stopFor = (clock: Clock): Stop => stops.get(clock.action) ?? open;
