/** Where parts lie: bins, and racks that are named by how the names of their bins begin. */

/** What parts a rack's name from its bin's: A1-01, A1.01, A1/01, A1 01. */
const PARTING = /[-./ ]/;

/** Whether a bin is the place meant, or lies in it: `A1-01` lies in `A1` and in `A1-01`, not in `A`. */
export const liesIn = (bin: string, place: string): boolean =>
  bin === place ||
  (place !== '' && bin.startsWith(place) && PARTING.test(bin.charAt(place.length)));

/** Whether two places have a bin in common. */
export const overlap = (one: string, other: string): boolean =>
  liesIn(one, other) || liesIn(other, one);

/** The racks of some bins, each with two of them at least, in order. */
export function racksOf(bins: readonly string[]): string[] {
  const starts = new Map<string, number>();
  for (const bin of bins)
    for (let at = 1; at < bin.length; at += 1)
      if (PARTING.test(bin.charAt(at))) {
        const start = bin.slice(0, at);
        starts.set(start, (starts.get(start) ?? 0) + 1);
      }
  return [...starts]
    .filter(
      ([start, count]) => count > 1 && !bins.includes(start) && !PARTING.test(start.slice(-1)),
    )
    .map(([start]) => start)
    .toSorted();
}
