import { ORPCError } from '@orpc/contract';
import { ValidationError } from '@orpc/server';
import { StoreHeld } from '../../db/refusal.ts';
import { troubleOf } from '../../db/trouble.ts';
import {
  BAD_INPUT,
  NOT_FOUND,
  STAFF_UNKNOWN,
  STORE_BUSY,
  STORE_TROUBLE,
} from '../../shared/contract/base.ts';
import { type Issue, inputIssues } from './input-issues.ts';

/** Refusals that any procedure may answer with; those of one procedure come from its own `errors`. */

const notFound = (what: string) =>
  new ORPCError('NOT_FOUND', {
    status: NOT_FOUND.status,
    message: NOT_FOUND.message,
    data: { what },
  });

export const staffUnknown = () =>
  new ORPCError('STAFF_UNKNOWN', {
    status: STAFF_UNKNOWN.status,
    message: STAFF_UNKNOWN.message,
  });

/** Input that the contract's schema lets pass and that is wrong all the same, at the field's path. */
export const badInput = (issues: Issue[]) =>
  new ORPCError('BAD_INPUT', {
    status: BAD_INPUT.status,
    message: BAD_INPUT.message,
    data: { issues },
  });

/** What is there, or the refusal that it isn't. */
export function found<T>(thing: T | undefined | null, what: string): T {
  if (thing === undefined || thing === null) throw notFound(what);
  return thing;
}

const storeHeld = () =>
  new ORPCError('STORE_BUSY', {
    status: STORE_BUSY.status,
    message:
      'A back-up is being brought back, and nothing can be written meanwhile. Wait until that is done, then repeat this step.',
  });

/** The declared refusal for a disk that is full or failing; undefined for an error of another kind. */
export function troubleRefusal(error: unknown) {
  const trouble = troubleOf(error);
  if (trouble === undefined) return undefined;
  const { status, message } = STORE_TROUBLE[trouble];
  return new ORPCError(trouble, { status, message, cause: error });
}

/**
 * Turns the library's answer to input that fails its schema into the declared `BAD_INPUT`, with the path
 * of each field, and a store that is held, or on a disk that is full or failing, into the declared errors for
 * these. It stands in front of every way in: the window's port, HTTP and the command line.
 */
async function nameRefusals<T>({ next }: { next: () => Promise<T> | T }): Promise<T> {
  try {
    return await next();
  } catch (error) {
    if (
      error instanceof ORPCError &&
      error.code === 'BAD_REQUEST' &&
      error.cause instanceof ValidationError
    )
      throw badInput(inputIssues(error.cause));
    if (error instanceof StoreHeld) throw storeHeld();
    throw troubleRefusal(error) ?? error;
  }
}

/** For `clientInterceptors` of a handler and `interceptors` of a client in process. */
export const deskInterceptors = [nameRefusals];
