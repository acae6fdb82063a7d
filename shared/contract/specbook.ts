import { z } from 'zod';
import { FEATURES } from '../work/features.ts';
import { CYCLES, SOURCE_KINDS, STANDINGS, VALVE_LAYOUTS } from '../work/vocabulary.ts';
import { reads, writes } from './base.ts';
import { CalendarDate, Instant, maybeText, text } from './fields.ts';
import { EngineModelId, SourceId, SpecificationId, StaffId } from './ids.ts';
import { exchange } from './specbook-exchange.ts';
import { sourceFiles } from './specbook-files.ts';
import { Fastener, SPECIFICATION_UNITS } from './specbook-words.ts';

export { Fastener, SPECIFICATION_UNITS };

/** The spec book: engine models, specifications, and where each of them came from. */

export const Source = z.object({
  id: SourceId,
  kind: z.enum(SOURCE_KINDS),
  title: z.string(),
  edition: z.string(),
  date: CalendarDate.nullable(),
});
export type Source = z.infer<typeof Source>;

/** An engine model by what it is called. */
export const NamedModel = z.object({ id: EngineModelId, make: z.string(), model: z.string() });
export type NamedModel = z.infer<typeof NamedModel>;

/** What another source prints against a specification: shown beside it, never averaged with it. */
export const Contradiction = z.object({
  source: Source,
  page: z.string(),
  /** As that source prints them, in its own unit; empty when there is none on that side. */
  low: z.string(),
  high: z.string(),
  unit: z.enum(SPECIFICATION_UNITS),
  lowBase: z.number().nullable(),
  highBase: z.number().nullable(),
  by: z.string(),
  at: Instant,
});
export type Contradiction = z.infer<typeof Contradiction>;

export const Specification = z.object({
  id: SpecificationId,
  engineModelId: EngineModelId,
  /** The family that a variant takes it from; null for what an entry states itself. */
  inheritedFrom: NamedModel.nullable(),
  feature: z.enum(FEATURES),
  /** Limits as the source prints them, as text in `unit`; empty when there is none on that side. */
  low: z.string(),
  high: z.string(),
  aim: z.string(),
  /** Beyond this the part is replaced; empty when the source names none. */
  wearLimit: z.string(),
  unit: z.enum(SPECIFICATION_UNITS),
  /** The same in the base unit of the feature. */
  lowBase: z.number().nullable(),
  highBase: z.number().nullable(),
  aimBase: z.number().nullable(),
  wearLimitBase: z.number().nullable(),
  /** Cold, dry, oiled, temperature … */
  condition: z.string(),
  source: Source,
  page: z.string(),
  standing: z.enum(STANDINGS),
  fastener: Fastener.nullable(),
  revision: z.int(),
  enteredBy: z.string(),
  enteredAt: Instant,
  confirmations: z.array(
    z.object({ by: z.string(), at: Instant, source: Source, page: z.string() }),
  ),
  /** Other figures from other sources that nobody has settled; with one of them it is never confirmed. */
  contradictions: z.array(Contradiction),
});
export type Specification = z.infer<typeof Specification>;

export const EngineModel = z.object({
  id: EngineModelId,
  make: z.string(),
  model: z.string(),
  cycle: z.enum(CYCLES),
  cylinders: z.int(),
  /** Swept volume in cm³, computed from bore and stroke when both are known. */
  displacement: z.number().nullable(),
  bore: z.number().nullable(),
  stroke: z.number().nullable(),
  /** Where the valves stand; null for an engine without, and where nobody said. */
  valves: z.enum(VALVE_LAYOUTS).nullable(),
  /** What the crankcase holds to the mark, ml. */
  oilAmount: z.number().nullable(),
  /** As the manual names it; of a two-stroke, the oil for its fuel. */
  oilGrade: z.string(),
  /** Parts of fuel to one part of oil; null for what is lubricated by its sump. */
  fuelRatio: z.number().nullable(),
  /** Designation of the spark plug. */
  plug: z.string(),
  note: z.string(),
  /** The family: what this variant does not state itself, dimensions among it, holds from there. */
  variantOf: NamedModel.nullable(),
  /** How many specifications hold for it, how many are unconfirmed, how many are contradicted. */
  specifications: z.int(),
  unconfirmed: z.int(),
  contradicted: z.int(),
});
export type EngineModel = z.infer<typeof EngineModel>;

const limit = maybeText(24);

const Millimetres = z.number().positive('A length is more than zero.').max(500).nullable();

export const specbook = {
  models: reads.input(z.strictObject({ text: maybeText(200) })).output(z.array(EngineModel)),

  model: reads.input(z.strictObject({ id: EngineModelId })).output(
    z.object({
      model: EngineModel,
      specifications: z.array(Specification),
      /** The variants of a family, by name. */
      variants: z.array(NamedModel),
    }),
  ),

  /** Every revision of an entry's own specification, newest first, with what was said against each. */
  revisions: reads
    .input(z.strictObject({ engineModelId: EngineModelId, feature: z.enum(FEATURES) }))
    .output(z.array(Specification)),

  /** The torques in the book for one thread, to hold a new one against. Diameter and pitch in mm. */
  torquesOfThread: reads
    .input(
      z.strictObject({
        diameter: z.number().positive().max(30),
        pitch: z.number().positive().max(5),
      }),
    )
    .output(z.array(z.object({ engineModel: NamedModel, specification: Specification }))),

  addModel: writes
    .errors({
      MODEL_TAKEN: {
        status: 409,
        message: 'The spec book has this make and model already. Open that entry and add to it.',
        data: z.object({ engineModelId: EngineModelId }),
      },
      VARIANT_OF_VARIANT: {
        status: 409,
        message:
          'That entry is a variant itself. Choose its family, and write down what differs from the family.',
        data: z.object({ family: NamedModel }),
      },
    })
    .input(
      z.strictObject({
        by: StaffId,
        make: text(80),
        model: text(80),
        cycle: z.enum(CYCLES),
        cylinders: z.int().min(1).max(4),
        /** Nominal bore and stroke in mm. */
        bore: Millimetres.default(null),
        stroke: Millimetres.default(null),
        valves: z.enum(VALVE_LAYOUTS).nullable().default(null),
        /** ml, to the mark. */
        oilAmount: z
          .number()
          .min(50, 'Give the oil in millilitres: 600, not 0.6.')
          .max(10_000, 'No small engine holds more than ten litres. Give it in millilitres.')
          .nullable()
          .default(null),
        oilGrade: maybeText(60),
        /** Parts of fuel to one of oil. */
        fuelRatio: z
          .number()
          .min(10, 'A mix has ten parts of fuel to one of oil at least. For 50:1 type 50.')
          .max(200, 'A mix has 200 parts of fuel to one of oil at most. For 50:1 type 50.')
          .nullable()
          .default(null),
        plug: maybeText(40),
        note: maybeText(2000),
        /** The family whose specifications hold where this entry states none of its own. */
        variantOf: EngineModelId.nullable().default(null),
      }),
    )
    .output(EngineModel),

  sources: reads.input(z.strictObject({})).output(z.array(Source)),

  addSource: writes
    .input(
      z.strictObject({
        by: StaffId,
        kind: z.enum(SOURCE_KINDS),
        title: text(200),
        edition: maybeText(80),
        date: CalendarDate.nullable().default(null),
      }),
    )
    .output(Source),

  /** Adds a specification, or a new revision of the one for the same feature; the old one stays. */
  addSpecification: writes
    .errors({
      TORQUE_QUESTIONED: {
        status: 409,
        message:
          'That torque doesn’t suit the thread and its class. Check the figure and its unit; save it as it is only if the source really says so.',
        data: z.object({ verdict: z.enum(['low', 'high']), preloadShareOfProof: z.number() }),
      },
    })
    .input(
      z.strictObject({
        by: StaffId,
        engineModelId: EngineModelId,
        feature: z.enum(FEATURES),
        low: limit,
        high: limit,
        aim: limit,
        wearLimit: limit,
        unit: z.enum(SPECIFICATION_UNITS),
        condition: maybeText(200),
        sourceId: SourceId,
        page: maybeText(40),
        fastener: Fastener.nullable().default(null),
        /** The source really says so: keep a torque that was questioned. */
        keepQuestioned: z.boolean().default(false),
      }),
    )
    .output(Specification),

  /** Somebody else checked it against the source, or another source says the same. */
  confirm: writes
    .errors({
      ALREADY_WITNESSED: {
        status: 409,
        message:
          'You have vouched for this specification with this source already. Somebody else, or another source, has to confirm it.',
      },
    })
    .input(
      z.strictObject({
        by: StaffId,
        specificationId: SpecificationId,
        sourceId: SourceId,
        page: maybeText(40),
      }),
    )
    .output(Specification),

  /** Another source prints other figures. They stand beside the specification until a revision settles it. */
  contradict: writes
    .errors({
      SAME_SOURCE: {
        status: 409,
        message:
          'That is the specification’s own source. If it prints something else, add a revision instead.',
      },
      SAME_FIGURES: {
        status: 409,
        message: 'That source gives the same figures. Confirm the specification with it instead.',
      },
      REVISED_SINCE: {
        status: 409,
        message:
          'There is a newer revision of this specification. Look at that one, and hold the other source against it.',
      },
    })
    .input(
      z.strictObject({
        by: StaffId,
        specificationId: SpecificationId,
        sourceId: SourceId,
        page: maybeText(40),
        low: limit,
        high: limit,
        unit: z.enum(SPECIFICATION_UNITS),
      }),
    )
    .output(Specification),

  ...exchange,

  ...sourceFiles,
};
