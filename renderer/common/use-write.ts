import {
  type UseMutationOptions,
  type UseMutationResult,
  useMutation,
  useQueryClient,
} from '@tanstack/react-query';

/**
 * A call that writes. When it came through, every list and page on the screen asks the desk again:
 * one write often changes more than the page that made it (a move changes the day, a payment the job).
 * The caller shows a refusal with `<RefusalAlert error={write.error} />`.
 */
export function useWrite<Data, Failure, Input, Context>(
  options: UseMutationOptions<Data, Failure, Input, Context>,
): UseMutationResult<Data, Failure, Input, Context> {
  const client = useQueryClient();
  return useMutation({
    ...options,
    onSuccess: async (...given) => {
      await options.onSuccess?.(...given);
      await client.invalidateQueries();
    },
  });
}
