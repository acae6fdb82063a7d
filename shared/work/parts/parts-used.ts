/**
 * Which of its lines the parts count for that a job was given. A part that stands in for the one on the line
 * counts as that one; the pieces of a kit that was opened for the job count as the kit. Quantities are whole
 * thousandths.
 */

export interface OpenedKit {
  kitId: string;
  /** Thousandths of the kit. */
  opened: number;
  /** In one kit, thousandths of each piece. */
  pieces: readonly { partId: string; quantity: number }[];
}

export interface JobUse {
  /** By part: what went to the job, less what came back. */
  issued: ReadonlyMap<string, number>;
  opened: readonly OpenedKit[];
  /** The parts that the job's lines name. */
  named: ReadonlySet<string>;
  /** The parts that took each other's place, one among them. */
  chainOf: (partId: string) => readonly string[];
}

/** The part of the job's lines that a part stands in for; itself when it stands in for none. */
export const countsAs = (
  partId: string,
  { named, chainOf }: Pick<JobUse, 'named' | 'chainOf'>,
): string =>
  named.has(partId) ? partId : (chainOf(partId).find((each) => named.has(each)) ?? partId);

/** By part, above zero. */
export function partsUsed({ issued, opened, named, chainOf }: JobUse): Map<string, number> {
  const left = new Map(issued);
  const used = new Map<string, number>();
  const add = (partId: string, quantity: number) =>
    used.set(partId, (used.get(partId) ?? 0) + quantity);
  for (const { kitId, opened: kits, pieces } of opened) {
    if (!named.has(kitId)) continue;
    add(kitId, kits);
    for (const { partId, quantity } of pieces) {
      const outOfKits = Math.round((quantity * kits) / 1000);
      left.set(partId, Math.max(0, (left.get(partId) ?? 0) - outOfKits));
    }
  }
  for (const [partId, quantity] of left) add(countsAs(partId, { named, chainOf }), quantity);
  return new Map([...used].filter(([, quantity]) => quantity > 0));
}
