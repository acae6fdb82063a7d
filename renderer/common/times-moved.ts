/** How often another day was promised, in words; empty for never. */
export function timesMoved(times: number): string {
  if (times === 0) return '';
  if (times === 1) return 'moved once';
  return times === 2 ? 'moved twice' : `moved ${times} times`;
}
