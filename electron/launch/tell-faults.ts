import { ORPCError } from '@orpc/server';

/**
 * An interceptor for oRPC: a fault of ours reaches the page without its innards, so they are told
 * here, on standard error. Refusals are no faults.
 */
export async function tellFaults<T>({ next }: { next: () => Promise<T> }): Promise<T> {
  try {
    return await next();
  } catch (error) {
    if (!(error instanceof ORPCError)) {
      process.stderr.write(`${error instanceof Error ? error.stack : String(error)}\n`);
    }
    throw error;
  }
}
