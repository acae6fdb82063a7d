import { ORPCError } from '@orpc/client';
import {
  type UseMutationOptions,
  type UseMutationResult,
  useMutation,
  useQueryClient,
} from '@tanstack/react-query';
import { useCallback, useState } from 'react';
import { giveKey, unansweredKeys } from './connection/request-keys.ts';
import { sameAgainGuard } from './same-again.ts';
import { mayHaveChanged } from './what-changed.ts';

/**
 * A call that writes. When it came through, every list and page on the screen asks the desk again:
 * one write often changes more than the page that made it (a move changes the day, a payment the job).
 * A double click writes once, and so does what is sent again because no answer came. The caller shows a refusal with `<RefusalAlert error={write.error} />`.
 */
export function useWrite<Data, Failure, Input, Context>(
  options: UseMutationOptions<Data, Failure, Input, Context>,
): UseMutationResult<Data, Failure, Input, Context> {
  const client = useQueryClient();
  const [guard] = useState(() => sameAgainGuard());
  const [keys] = useState(() => unansweredKeys());
  const mutation = useMutation({
    ...options,
    onSuccess: async (...given) => {
      guard.done();
      keys.answered();
      await options.onSuccess?.(...given);
      await client.invalidateQueries({
        predicate: ({ queryKey }) => mayHaveChanged(queryKey, options.mutationKey),
      });
    },
    onError: async (...given) => {
      guard.refused();
      if (given[0] instanceof ORPCError) keys.answered();
      await options.onError?.(...given);
    },
  });
  const send = mutation.mutate;
  const mutate = useCallback(
    (...call: Parameters<typeof send>) => {
      if (!guard.admits(call[0])) return;
      giveKey(call[0], keys.keyFor(call[0]));
      send(...call);
    },
    [guard, keys, send],
  );
  return { ...mutation, mutate };
}
