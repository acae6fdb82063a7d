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
  /**
   * Waits until no other call is under way, and does something; calls that come meanwhile wait for it.
   * @param own how many of the calls under way are those of whoever asks
   * @param limit milliseconds to wait at the most
   * @throws the declared STORE_BUSY when the limit is reached, or the gate is closed
   */
  alone: <T>(work: () => T, own: number, limit?: number) => Promise<T>;
};

const busy = (message: string) =>
  // The contract declares this one for every procedure.
  new ORPCError('STORE_BUSY', { defined: true, status: 503, message });

export function createCallGate(): CallGate {
  let underWay = 0;
  let closed = false;
  /** What calls wait for before they are let in; undefined while they needn't. */
  let opening: Promise<void> | undefined;
  const watchers = new Set<() => void>();

  /** Whether no more than so many calls were left within the limit. */
  function calm(left: number, limit: number): Promise<boolean> {
    return new Promise((resolve) => {
      const end = (reached: boolean): void => {
        clearTimeout(timer);
        watchers.delete(watch);
        resolve(reached);
      };
      const watch = (): void => {
        if (underWay <= left) end(true);
      };
      const timer = setTimeout(() => end(false), limit);
      watchers.add(watch);
      watch();
    });
  }

  function refuseIfClosed(): void {
    if (closed) throw busy('Tappet is closing. Start it again, then repeat this step.');
  }

  return {
    async pass({ next }) {
      refuseIfClosed();
      while (opening !== undefined) await opening;
      refuseIfClosed();
      underWay += 1;
      try {
        return await next();
      } finally {
        underWay -= 1;
        for (const watch of watchers) watch();
      }
    },

    async drain(limit = 10_000) {
      closed = true;
      await calm(0, limit);
      return underWay;
    },

    async alone(work, own, limit = 10_000) {
      refuseIfClosed();
      let open: () => void = () => undefined;
      opening = new Promise((resolve) => {
        open = resolve;
      });
      try {
        if (!(await calm(own, limit)))
          throw busy('Others are at work in this shop just now. Try again when they are done.');
        refuseIfClosed();
        return work();
      } finally {
        opening = undefined;
        open();
      }
    },
  };
}
