/**
 * Documents as a person speaks of them.
 */
import type { DocumentKind } from '../contract/document-kind.ts';
import type { DocumentFields } from '../contract/documents.ts';
import { countryInWords } from '../words/countries.ts';

/** "passport", "right to work in Canada", "carnet for Canada". */
export function documentInWords(kind: DocumentKind, country: string | null): string {
  if (kind === 'vehicle') return 'vehicle paper';
  if (kind === 'other') return 'other document';
  if (country === null) return kind;
  return `${kind} ${kind === 'carnet' ? 'for' : 'in'} ${countryInWords(country)}`;
}

/** What a document is called on a list: its title where it has one, else its kind and countries. */
export function titleOf({ kind, title, countries }: Pick<DocumentFields, 'kind' | 'title' | 'countries'>): string {
  if (title !== '') return title;
  const named = kind === 'right to work' || kind === 'carnet' ? (countries[0] ?? null) : null;
  const words = documentInWords(kind, named);
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
}
