/**
 * A document of which nothing is known yet but its kind.
 */
import type { DocumentFields } from '../contract/documents.ts';

export const blankDocument = (kind: DocumentFields['kind']): DocumentFields => ({
  kind,
  title: '',
  handId: null,
  number: '',
  issuedBy: '',
  country: null,
  from: null,
  until: null,
  worldwide: false,
  countries: [],
  limit: null,
  leadDays: null,
  note: '',
});
