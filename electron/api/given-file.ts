/**
 * A file that a person gives: its bytes, and what it is by them whatever its name says.
 */
import { LARGEST_FILE } from '../../core/contract/parts.ts';
import { fileType, TOO_LARGE, WRONG_TYPE, type FileType } from '../../core/papers/file-type.ts';
import { badInput } from './trouble.ts';

/** @throws BAD_INPUT for what is no base64, holds more than is kept, or is neither a PDF nor a picture */
export function givenFile(base64: string): { bytes: Uint8Array; kind: FileType } {
  const bytes = Buffer.from(base64, 'base64');
  if (bytes.length === 0 || bytes.toString('base64') !== base64) throw badInput([{ field: 'base64', sentence: 'is not base64' }]);
  if (bytes.length > LARGEST_FILE) throw badInput([{ field: 'base64', sentence: TOO_LARGE }]);
  const kind = fileType(bytes);
  if (!kind) throw badInput([{ field: 'base64', sentence: WRONG_TYPE }]);
  return { bytes: new Uint8Array(bytes), kind };
}
