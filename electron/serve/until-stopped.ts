const signals = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;

/**
 * Resolves when the program is told to stop. npm runs a script through a shell that passes no
 * signal on: whoever stops npm would leave a server behind that nobody sees. So under npm, a
 * parent that is gone means the same as a signal.
 */
export function untilStopped(
  underNpm = process.env.npm_lifecycle_event !== undefined,
): Promise<void> {
  return new Promise((resolve) => {
    const parent = process.ppid;
    const watch = underNpm ? setInterval(() => process.ppid !== parent && stop(), 500) : undefined;
    function stop(): void {
      clearInterval(watch);
      resolve();
    }
    // The listeners stay: a second Ctrl+C must not cut off the closing of the store.
    for (const signal of signals) process.on(signal, stop);
  });
}
