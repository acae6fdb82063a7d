import { D680 } from './d680.ts';
import { D680G } from './d680g.ts';
import type { DemoEngine, DemoVariant } from './engine.ts';
import { K416 } from './k416.ts';
import { OH172 } from './oh172.ts';
import { P62 } from './p62.ts';
import { V190 } from './v190.ts';

/** Five invented engine models with all their specifications. */
export const DEMO_ENGINES = {
  oh172: OH172,
  v190: V190,
  d680: D680,
  k416: K416,
  p62: P62,
} as const satisfies Record<string, DemoEngine>;

export type EngineKey = keyof typeof DEMO_ENGINES;

/** What differs from a family is written down, and nothing else. */
export const DEMO_VARIANTS: Partial<Record<EngineKey, readonly DemoVariant[]>> = {
  d680: [D680G],
};

/** Maker and model as the engine's plate says them. */
export const enginePlate = (key: EngineKey): { make: string; model: string } => {
  const { make, model } = DEMO_ENGINES[key];
  return { make, model };
};
