/**
 * Reading in the thread that asks, with the lists that ship with the program.
 */
import type { Reading } from '../../core/contract/inquiries.ts';
import { readInquiry, type ToRead } from '../../core/inquiries/read.ts';
import { gazetteerFrom } from '../api/gazetteer.ts';
import { learnedFrom } from '../api/learned.ts';

/** A reader of messages: its first message waits until the lists are read. */
export function readsHere(gazetteer = gazetteerFrom(), learned = learnedFrom()): (message: ToRead) => Reading {
  return (message) => readInquiry({ ...message, gazetteer: gazetteer(), learned: learned() });
}
