import { useMutation } from '@tanstack/react-query';
import { useRef, useState } from 'react';

type Run<Input, Output> = (
  input: Input,
  transfer: { onShare: (share: number) => void; signal: AbortSignal },
) => Promise<Output>;

/** A file on its way: how far it is, and how it is stopped. To stop it is no error. */
export function useTransfer<Input, Output>(run: Run<Input, Output>) {
  const [share, setShare] = useState(0);
  const controller = useRef(new AbortController());
  const mutation = useMutation({
    mutationFn: (input: Input) => {
      controller.current = new AbortController();
      setShare(0);
      return run(input, { onShare: setShare, signal: controller.current.signal });
    },
  });
  return {
    begin: mutation.mutate,
    stop: () => controller.current.abort(),
    share,
    isPending: mutation.isPending,
    input: mutation.variables,
    error: controller.current.signal.aborted ? null : mutation.error,
  };
}
