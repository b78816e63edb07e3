/**
 * What was read from a message as the facts of a job. What had to be assumed is asked, so that it is seen.
 */
import type { JobDay } from '../contract/jobs.ts';
import type { Moment } from '../contract/parts.ts';
import type { Question, Reading } from '../contract/inquiries.ts';
import { type Facts, newFacts } from '../jobs/facts.ts';
import { readDays } from '../jobs/days.ts';
import { instantOf, instantText, WallTimeError } from '../time/read.ts';
import { oneLine } from '../words/visible.ts';
import { assumedDays } from './assumed-days.ts';
import { titleOf } from './title.ts';

export type Usual = {
  /** Zone of home: for reply-by, and for days while the place is not known. */
  homeZone: string;
  /** Minutes of a day and the most of a half day, as the rate card of the role says. */
  dayMinutes: number;
  halfMinutes: number;
};

export type ReadJob = { facts: Facts; questions: Question[] };

/** The most that the books keep of a short line, of a deliverable, and of deliverables. */
const LINE = 120;
const DELIVERABLE = 300;
const DELIVERABLES = 50;
const cut = (text = '', longest = LINE) => oneLine(text).slice(0, longest).trim();

/**
 * Facts and open questions of a new job.
 * @param title as the person typed it; empty for one made from the reading
 */
export function jobOf(reading: Reading, message: string, title: string, usual: Usual): ReadJob {
  const { fields } = reading;
  const place = reading.placeFound ?? null;
  const days = daysOf(reading, usual);
  const replyBy = replyByOf(fields.replyBy, usual.homeZone);
  const asked = new Set(reading.questions.map((question) => question.field));
  const assumed = [
    ...days.questions,
    ...replyBy.questions,
    ...(fields.role ? [] : [ask('role', 'Which role is asked for? Filming is assumed.')]),
  ];
  return {
    facts: newFacts({
      title: title || titleOf(fields, place, message),
      organisation: cut(fields.organisation),
      contact: { name: cut(fields.contactName), email: cut(fields.contactEmail), phone: cut(fields.contactPhone) },
      role: fields.role,
      place,
      days: days.days,
      replyBy: replyBy.moment,
      budget: fields.budget ?? null,
      deliverables: (fields.deliverables ?? [])
        .map((one) => cut(one, DELIVERABLE))
        .filter((one) => one !== '')
        .slice(0, DELIVERABLES),
    }),
    questions: [...askedOnce(reading.questions).map(withWholes), ...assumed.filter((question) => !asked.has(question.field))],
  };
}

/** A job keeps the whole place and all days, so its questions offer these. */
function withWholes(question: Question): Question {
  const isStart = question.field === 'start';
  return {
    ...question,
    choices: question.choices.map(({ label, value, place, days }) => ({ label, value: place ?? (isStart ? days : undefined) ?? value })),
  };
}

/** Sets of days to choose from tell the last day with the first. */
function askedOnce(questions: readonly Question[]): Question[] {
  const sets = questions.some(({ field, choices }) => field === 'start' && choices.length > 0);
  return questions.filter(({ field }) => !(sets && field === 'end'));
}

/** Days on the clock of the place; none where they cannot lie on it, with the reason asked. */
function daysOf(reading: Reading, usual: Usual): { days: JobDay[]; questions: Question[] } {
  const { days, questions } = assumedDays(reading.fields, usual, reading.datesFound);
  const [trouble] = readDays(days, reading.placeFound?.zone ?? usual.homeZone).troubles;
  const meant = 'Which days and times are meant?';
  return trouble ? { days: [], questions: [{ ...ask('firstCall', `${trouble.sentence} ${meant}`), put: meant }] } : { days, questions };
}

function replyByOf(wall: string | undefined, zone: string): { moment: Moment | null; questions: Question[] } {
  if (wall === undefined) return { moment: null, questions: [] };
  try {
    return { moment: { wall, zone, at: instantText(instantOf(wall, zone).epochMilliseconds) }, questions: [] };
  } catch (error) {
    if (error instanceof WallTimeError) return { moment: null, questions: [ask('replyBy', error.message)] };
    throw error;
  }
}

function ask(field: Question['field'], sentence: string): Question {
  return { field, ask: sentence, choices: [] };
}
