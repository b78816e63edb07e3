import { z } from 'zod';

export const DocumentKind = z.enum([
  'passport',
  'identity card',
  'right to work',
  'liability insurance',
  'equipment insurance',
  'driving licence',
  'remote pilot licence',
  'vehicle',
  'carnet',
  'other',
]);
export type DocumentKind = z.infer<typeof DocumentKind>;
