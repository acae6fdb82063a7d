/** Whether a process of that number runs on this machine. */
export function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    // Somebody else's process is alive, too.
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}
