import { ORPCError } from '@orpc/server';

/** Counts the calls in flight, so that the store is not closed under one of them. */
export type CallGate = {
  /** An interceptor for oRPC: counts the call, or refuses it once the gate is closed. */
  pass: <T>(options: { next: () => Promise<T> }) => Promise<T>;
  /**
   * Lets no new call in and waits for those that are under way.
   * @param limit milliseconds to wait at the most
   * @returns how many calls were still under way when the limit was reached; 0 is the good case
   */
  drain: (limit?: number) => Promise<number>;
};

export function createCallGate(): CallGate {
  let underWay = 0;
  let closed = false;
  let whenEmpty: (() => void) | undefined;

  return {
    async pass({ next }) {
      if (closed) {
        // The contract declares this one for every procedure.
        throw new ORPCError('STORE_BUSY', {
          defined: true,
          status: 503,
          message: 'Tappet is closing. Start it again, then repeat this step.',
        });
      }
      underWay += 1;
      try {
        return await next();
      } finally {
        underWay -= 1;
        if (underWay === 0) whenEmpty?.();
      }
    },

    async drain(limit = 10_000) {
      closed = true;
      if (underWay === 0) return 0;
      const empty = new Promise<void>((resolve) => {
        whenEmpty = resolve;
      });
      let timer: NodeJS.Timeout | undefined;
      const late = new Promise<void>((resolve) => {
        timer = setTimeout(resolve, limit);
      });
      await Promise.race([empty, late]);
      clearTimeout(timer);
      return underWay;
    },
  };
}
