import { z } from 'zod';
import { FITTED_PARTS } from '../../work/bench/deciding/decision-parts.ts';
import { writes } from '../base.ts';
import { EngineModelId, PartId, StaffId } from '../ids.ts';

/** Which engine models a part fits, and what it is there. */

const FITTED = [...FITTED_PARTS, 'other'] as const;

const facts = {
  engineModelId: EngineModelId,
  fitted: z.enum(FITTED),
  /** Oversize, undersize below zero, mm; zero for the standard size. */
  step: z.number().min(-10).max(10).multipleOf(0.001),
};

export const Fit = z.object({ ...facts, /** Make and model. */ model: z.string() });
export type Fit = z.infer<typeof Fit>;

export const fits = {
  /** What a part fits, all of it anew. */
  setFits: writes
    .input(
      z.strictObject({
        by: StaffId,
        partId: PartId,
        fits: z.array(z.strictObject({ ...facts, step: facts.step.default(0) })).max(200),
      }),
    )
    .output(z.array(Fit)),
};
