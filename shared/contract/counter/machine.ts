import { z } from 'zod';
import { MACHINE_KINDS } from '../../work/vocabulary.ts';
import { maybeText } from '../fields.ts';
import { CustomerId, EngineId, EngineModelId, JobCode, MachineId } from '../ids.ts';

/** A machine with its engine, as their plates say. */

export const machineFields = {
  kind: z.enum(MACHINE_KINDS),
  make: maybeText(80),
  model: maybeText(80),
  serial: maybeText(80),
};

/** As on the engine's plate. */
export const enginePlate = {
  make: maybeText(80),
  model: maybeText(80),
  typeCode: maybeText(80),
  serial: maybeText(80),
  dateCode: maybeText(40),
};

export const engineFields = {
  ...enginePlate,
  /** The engine's entry in the spec book, when it is known at the counter. */
  engineModelId: EngineModelId.nullable().default(null),
};

const Engine = z.object({
  id: EngineId,
  make: z.string(),
  model: z.string(),
  typeCode: z.string(),
  serial: z.string(),
  dateCode: z.string(),
  engineModelId: EngineModelId.nullable(),
  /** Make and model of the spec book's entry; empty when none is chosen. */
  engineModelName: z.string(),
});

export const Machine = z.object({
  id: MachineId,
  customerId: CustomerId,
  customerName: z.string(),
  kind: z.enum(MACHINE_KINDS),
  make: z.string(),
  model: z.string(),
  serial: z.string(),
  engine: Engine,
  /** The newest job on which it is in the shop now. */
  openJob: JobCode.nullable(),
});
export type Machine = z.infer<typeof Machine>;
