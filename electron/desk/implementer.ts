import { implement } from '@orpc/server';
import { contract } from '../../shared/contract/index.ts';
import type { DeskContext } from './context.ts';

/** The contract, ready to be given its handlers. */
export const os = implement(contract).$context<DeskContext>();
