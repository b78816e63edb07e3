/**
 * The contract as a list and as JSON Schema, for the command line.
 */
import { isContractProcedure } from '@orpc/contract';
import { z } from 'zod';
import type { Meta } from '../../core/contract/base.ts';
import { contract } from '../../core/contract/index.ts';

export type Listed = { name: string; kind: Meta['kind']; about: string };
export type Described = Listed & { input: object; output: object };

/** Every procedure of the contract, in its order. */
export function listProcedures(): Listed[] {
  return Object.entries(contract).flatMap(([subject, procedures]) =>
    Object.keys(procedures).flatMap((procedure) => listed(`${subject}.${procedure}`) ?? []),
  );
}

/** One procedure with the JSON Schema (2020-12) of what goes in and comes out, or null where there is none of that name. */
export function describeProcedure(name: string): Described | null {
  const entry = listed(name);
  const definition = definitionOf(name);
  if (!entry || !definition) return null;
  const { inputSchema, outputSchema } = definition;
  return {
    ...entry,
    input: z.toJSONSchema(inputSchema as z.ZodType, { io: 'input', unrepresentable: 'any' }),
    output: z.toJSONSchema(outputSchema as z.ZodType, { io: 'output', unrepresentable: 'any' }),
  };
}

function listed(name: string): Listed | null {
  const definition = definitionOf(name);
  if (!definition) return null;
  const { kind, about } = definition.meta as Meta;
  return { name, kind, about };
}

/** Whether a procedure takes a file, so that its input may be larger than others. */
export function takesFile(name: string): boolean {
  return (definitionOf(name)?.meta as Meta | undefined)?.file === true;
}

function definitionOf(name: string) {
  const [subject = '', procedure = '', more] = name.split('.');
  const subjects: Record<string, Record<string, unknown>> = contract;
  if (more !== undefined || !Object.hasOwn(subjects, subject) || !Object.hasOwn(subjects[subject] ?? {}, procedure)) return null;
  const found = subjects[subject]?.[procedure];
  return isContractProcedure(found) ? found['~orpc'] : null;
}
