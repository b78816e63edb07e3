import type { Trouble } from '../../core/contract/base.ts';
import type { Read } from '../../core/money/parse.ts';

type Field = { field: string; sentence: string };

/** Reads the typed texts of a form and gathers what could not be read, so that every input says its own trouble at once. */
export class Reader {
  private readonly fields: Field[] = [];

  refuse(field: string, sentence: string): void {
    this.fields.push({ field, sentence });
  }

  /** The value that was read, or undefined with its sentence noted. */
  take<T>(field: string, read: Read<T>): T | undefined {
    if (read.ok) return read.value;
    this.refuse(field, `was not read: ${read.sentence}`);
    return undefined;
  }

  get trouble(): Trouble | null {
    if (this.fields.length === 0) return null;
    return {
      what: 'Something here cannot be read.',
      kept: 'Nothing was saved; what you typed is still here.',
      todo: 'Correct what is marked and save again.',
      fields: this.fields,
    };
  }
}
