/**
 * The insurance certificate that a job asks for.
 */
import { certificateText, certificateTroubles } from '../../core/documents/certificate.ts';
import { allDocuments } from '../../db/documents.ts';
import { ownSetup } from './book.ts';
import { whole } from './job-deed.ts';
import { os } from './os.ts';

export const certificate = os.documents.certificate.handler(({ input, context }) =>
  context.store.read((db) => {
    const job = whole(db, input.jobId, context.now());
    const { home, name } = ownSetup(db);
    const insurances = allDocuments(db).filter(({ kind, handId }) => kind === 'liability insurance' && handId === null);
    // The one that lasts longest is the one that is written about.
    const last = insurances.toSorted((a, b) => ((a.until ?? '') > (b.until ?? '') ? -1 : 1))[0];
    return { troubles: certificateTroubles(job, insurances, home), text: certificateText(job, last, name) };
  }),
);
