import type { EngineKey } from '../../../db/demo/engines/index.ts';
import {
  DEMO_FITS,
  DEMO_KITS,
  DEMO_LATER_PARTS,
  DEMO_LATER_PRICE,
  DEMO_NUMBERS,
  DEMO_SUPERSEDED,
} from '../../../db/demo/part-facts.ts';
import type { DeskClient } from './client.ts';

interface Known {
  /** Ids by number. */
  parts: ReadonlyMap<string, string>;
  engines: ReadonlyMap<EngineKey, string>;
}

/** Writes what the shop knows of its parts beside the shelf; nothing of parts and engines that it hasn't got. */
export async function tellParts(
  desk: DeskClient,
  by: string,
  { parts, engines }: Known,
): Promise<void> {
  const known = new Map(parts);
  for (const { stock, ...part } of DEMO_LATER_PARTS) {
    const { id } = await desk.parts.add({ by, ...part, ...DEMO_LATER_PRICE });
    known.set(part.number, id);
    await desk.parts.move({
      by,
      partId: id,
      kind: 'received',
      quantity: stock * 1000,
      reason: 'Opening stock',
    });
  }
  for (const [number, others] of Object.entries(DEMO_NUMBERS))
    for (const other of others) await desk.parts.addNumber({ by, partId: of(number), ...other });
  for (const [former, current] of DEMO_SUPERSEDED)
    await desk.parts.supersede({ by, partId: of(former), supersededBy: of(current) });
  for (const [kit, pieces] of Object.entries(DEMO_KITS))
    await desk.parts.setPieces({
      by,
      kitId: of(kit),
      pieces: pieces.map((number) => ({ partId: of(number), quantity: 1000 })),
    });
  for (const [number, engine, fitted, step] of DEMO_FITS) {
    const engineModelId = engines.get(engine);
    if (engineModelId !== undefined)
      await desk.parts.setFits({ by, partId: of(number), fits: [{ engineModelId, fitted, step }] });
  }

  function of(number: string): string {
    const id = known.get(number);
    if (id === undefined) throw new Error(`The invented shop has no part '${number}'.`);
    return id;
  }
}
