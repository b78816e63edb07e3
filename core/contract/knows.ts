/**
 * What a job knows beside dates and money: who pays, which papers are asked for, who is on site, what the place is like, what must be filmed.
 * Every field may be empty; what has a due date can be a clock on the Desk.
 */
import { z } from 'zod';
import { DocumentKind } from './document-kind.ts';
import { DateText, Line, Money, Note } from './parts.ts';

/** A paper that the client asks for: asked, due, sent. */
export const AskedPaper = z.strictObject({ asked: z.boolean(), due: DateText.nullable(), sentOn: DateText.nullable(), detail: Note });
const Person = z.strictObject({ name: Line, phone: Line, what: Line });

export const Knows = z.strictObject({
  payer: Line.describe('who pays, when it is not the client'),
  billingAddress: Note,
  purchaseOrder: z.strictObject({ required: z.boolean(), number: Line }),
  taxForm: AskedPaper,
  insurance: AskedPaper.extend({
    named: Line.default('').describe('who is to be named on it'),
    limit: Money.nullable().default(null).describe('at least'),
    askedOn: DateText.nullable().default(null).describe('when the insurer was asked for it'),
  }).describe('detail: what else it must say'),
  needs: z.array(DocumentKind).max(10).default([]).describe('documents that this job needs beside what borders and insurers ask for'),
  confidentiality: z.strictObject({
    mayShow: z.boolean().nullable().describe('null: not agreed'),
    until: DateText.nullable(),
    detail: Note,
  }),
  onSite: z.array(Person).max(6),
  dock: Note.describe('dock and parking'),
  access: Note.describe('access and badges'),
  power: Note,
  network: Note.describe('wired and wireless'),
  dress: Line,
  meals: Line,
  wetWeather: Note,
  sessions: Note,
  mustHave: Note.describe('must-have list'),
  names: Note.describe('names to spell'),
  music: Note.describe('music licence'),
  usage: Note.describe('where, how long, paid media or not'),
  originals: Note,
  cutsApprover: Line.describe('who approves cuts'),
  overtimeApprover: Line.describe('who may approve overtime on site'),
});
export type Knows = z.infer<typeof Knows>;
