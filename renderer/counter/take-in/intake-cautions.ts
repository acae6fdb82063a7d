import { INTAKE_CAUTIONS } from '../../../shared/work/cautions.ts';
import type { MachineKind } from '../../../shared/work/vocabulary.ts';

/** What can hurt whoever lifts such a machine off a trailer and rolls it in. */
const WHEN_MOVED: Partial<Record<MachineKind, string>> = {
  tiller: 'Tines turn with the engine: plug lead off before it is rolled in.',
  mower: 'The blade turns with the engine: plug lead off before it is laid over.',
  'riding-mower': 'Key out and battery off before anybody reaches under it.',
  pump: 'Ask what was pumped before it is opened.',
  generator: 'Work on house wiring and on gas fuel is for licensed people only.',
  'log-splitter': 'Lower the ram and let the pressure out before it is moved.',
  'snow-thrower': 'A jammed auger can spring: plug lead off, never by hand.',
  'pressure-washer': 'Let the pressure out before a hose comes off.',
  chipper: 'Rotor and belts run on after the engine stops.',
  chainsaw: 'Bar cover on; its fuel holds oil, so mark the can.',
  kart: 'Keep sleeves clear of chain and sprocket; the exhaust is hot.',
};

/** The cautions of the counter while such a machine comes in. */
export function intakeCautions(kind: MachineKind | null): string[] {
  const moved = kind === null ? undefined : WHEN_MOVED[kind];
  return moved === undefined ? INTAKE_CAUTIONS : [moved, ...INTAKE_CAUTIONS];
}
