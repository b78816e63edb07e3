/**
 * Whom an offer is billed to: who pays by the job's own word, else the client that it names.
 */
import type { Job } from '../contract/jobs.ts';
import type { Client } from '../contract/people.ts';

/** What a paper needs of a client. */
export type BilledClient = Pick<Client, 'name' | 'billing' | 'taxId'>;
/** Empty texts are not known. The address is as it was typed, in lines. */
export type Billed = { name: string; address: string; taxId: string; order: string };

/** The organisation that a paper is for, empty where only a contact is known. */
export function organisationOf(job: Pick<Job, 'organisation'>, client: BilledClient | undefined): string {
  return job.organisation.trim() || (client?.name ?? '');
}

/** Somebody else who pays has an address of their own, and not the client's tax id. */
export function billedTo(job: Pick<Job, 'organisation' | 'knows'>, client: BilledClient | undefined): Billed {
  const { knows, organisation } = job;
  const payer = knows.payer.trim();
  const order = knows.purchaseOrder.number;
  if (payer !== '' || !client) return { name: payer || organisation.trim(), address: knows.billingAddress, taxId: '', order };
  const { name, billing, taxId } = client;
  return { name: billing.name.trim() || name, address: knows.billingAddress.trim() || billing.address, taxId, order };
}

/** Who pays where that is not whom the paper is for; null where it is, or where nobody is named. */
export function otherPayer(
  job: Pick<Job, 'organisation' | 'knows'>,
  client: BilledClient | undefined,
): Pick<Billed, 'name' | 'address'> | null {
  const { name, address } = billedTo(job, client);
  return name === '' || name === organisationOf(job, client) ? null : { name, address: address.trim() };
}
