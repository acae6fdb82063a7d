import { isDefinedError } from '@orpc/client';
import { useEffect, useReducer, useRef } from 'react';
import { deskQuery } from '../common/desk.ts';
import { useBy } from '../common/station.tsx';
import { useWrite } from '../common/use-write.ts';
import { afterEvent, EMPTY_QUEUE, type QueueEvent, type SentReading } from './reading-queue.ts';

/** Sends readings one after another, in the order of their Enters; what comes of each is in the queue. */
export function useReadingQueue() {
  const by = useBy();
  // Two places may well read the same: every one is sent, and each has a key of its own.
  const record = useWrite(deskQuery.bench.record.mutationOptions(), { sameAgain: 'meant' });
  const [queue, tell] = useReducer(afterEvent, EMPTY_QUEUE);
  const waiting = useRef<SentReading[]>([]);
  const underWay = useRef(false);
  const ids = useRef(0);

  const sendNext = () => {
    const next = waiting.current[0];
    if (next === undefined || underWay.current) return;
    underWay.current = true;
    const settle = (event: QueueEvent) => {
      underWay.current = false;
      waiting.current.shift();
      tell(event);
      sendNext();
    };
    record.mutate(
      { by, ...next.input },
      {
        onSuccess: (reading) => settle({ what: 'recorded', id: next.id, reading }),
        onError: (error) =>
          settle(
            isDefinedError(error) && error.code === 'READING_QUESTIONED'
              ? { what: 'asked', reading: { ...next, slip: error.data } }
              : { what: 'refused', reading: { ...next, error } },
          ),
      },
    );
  };

  const { mutate } = record;
  useEffect(
    () => () => {
      // Whoever leaves the bench in the middle leaves nothing behind.
      for (const left of waiting.current.slice(underWay.current ? 1 : 0))
        mutate({ by, ...left.input });
    },
    [by, mutate],
  );

  return {
    queue,
    send: (sent: Omit<SentReading, 'id'>) => {
      ids.current += 1;
      const reading = { ...sent, id: ids.current };
      waiting.current.push(reading);
      tell({ what: 'sent', reading });
      sendNext();
    },
    settle: (id: number) => tell({ what: 'settled', id }),
  };
}

export type QueueInUse = ReturnType<typeof useReadingQueue>;
