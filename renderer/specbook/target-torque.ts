import { aim } from '../../shared/trade/index.ts';
import type { SpecificationBand } from '../../shared/work/specbook/specification-band.ts';

/** The torque that a specification aims at, N·m; with one limit and no aim, the limit itself. */
export const targetTorque = (band: SpecificationBand): number | null =>
  band.low !== undefined && band.high !== undefined
    ? aim(band)
    : (band.aim ?? band.high ?? band.low ?? null);
