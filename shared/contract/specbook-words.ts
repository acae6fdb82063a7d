import { z } from 'zod';
import { maybeText } from './fields.ts';

/** Words of the spec book that its procedures and its files share. */

/** Units that a specification may be printed in by its source, by what they measure. */
export const SPECIFICATION_UNITS = [
  'mm',
  'um',
  'in',
  'thou',
  'N·m',
  'lbf·ft',
  'lbf·in',
  'kgf·m',
  'kgf·cm',
  'kPa',
  'psi',
  'bar',
  'Ω',
  'kΩ',
  'cm3',
  'in3',
  'ml',
  '1/min',
  'rpm',
  ':1',
] as const;

/** A fastener group: what the plausibility check and the bolt picture need. Diameter and pitch in mm. */
export const Fastener = z.object({
  /** The thread as the source prints it, `5/16-18 UNC`; empty when only its size in mm is known. */
  designation: maybeText(40),
  diameter: z.number().positive().max(30),
  pitch: z.number().positive().max(5),
  /** As marked on the head: `8.8`, `10.9`, `grade 5` … */
  propertyClass: z.string(),
  count: z.int().min(1).max(24),
  pattern: z.enum(['cross', 'spiral', 'in-line']),
  /** Shares of the final torque, ascending, the last of them 1. */
  stages: z.array(z.number().gt(0).max(1)).min(1).max(6),
});
export type Fastener = z.infer<typeof Fastener>;
