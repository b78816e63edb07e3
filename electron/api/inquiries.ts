import { readInquiry } from '../../core/inquiries/read.ts';
import { os } from './os.ts';
import { take } from './take-inquiry.ts';

const read = os.inquiries.read.handler(({ input, context }) => readInquiry({ ...input, gazetteer: context.gazetteer() }));

export const inquiries = { read, take };
