/**
 * The implementer of the contract: each subject's file takes its procedures from here.
 */
import { implement } from '@orpc/server';
import { contract } from '../../core/contract/index.ts';
import type { Context } from './context.ts';

export const os = implement(contract).$context<Context>();
