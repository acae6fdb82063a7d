/** What every page asks for and only some rooms write: who works here, how the shop is set up, its rules. */
const SET_BY: Record<string, readonly string[]> = {
  'office.about': ['office'],
  'office.shop': ['office'],
  'office.staff': ['office'],
  'till.rules': ['office', 'till'],
};

const pathOf = (key: readonly unknown[] | undefined): readonly string[] => {
  const [path] = key ?? [];
  return Array.isArray(path) ? path.filter((part) => typeof part === 'string') : [];
};

/**
 * Whether a query may answer otherwise after a write. One write often changes more than the page that made
 * it, so that all may, but for what the writing room never sets.
 */
export function mayHaveChanged(
  query: readonly unknown[],
  written: readonly unknown[] | undefined,
): boolean {
  const [room] = pathOf(written);
  const setBy = SET_BY[pathOf(query).join('.')];
  return setBy === undefined || room === undefined || setBy.includes(room);
}
