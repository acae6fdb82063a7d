import { ORPCError } from '@orpc/contract';
import { BackUpTrouble } from '../../../db/back-ups/trouble.ts';
import { BACK_UP_REFUSALS, STOPPED } from '../../../shared/contract/back-ups.ts';
import { troubleRefusal } from '../refuse.ts';

/** Thrown within a work that somebody stopped. */
export class Stopped extends Error {}

/** The declared refusal for what ended a work, or undefined for a mistake of ours. */
export function refusalFor(error: unknown): ORPCError<string, unknown> | undefined {
  if (error instanceof ORPCError) return error;
  if (error instanceof Stopped) return new ORPCError('STOPPED', STOPPED);
  if (error instanceof BackUpTrouble)
    return new ORPCError(error.code, BACK_UP_REFUSALS[error.code]);
  return troubleRefusal(error);
}
