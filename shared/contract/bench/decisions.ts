import { z } from 'zod';
import { UNITS } from '../../trade/index.ts';
import { COMMON_OVERSIZES, USUAL_ALLOWANCE } from '../../work/bench/deciding/decision-sizes.ts';
import { DECISION_CHOICES, DECISION_SUBJECTS } from '../../work/bench/deciding/decisions.ts';
import { FEATURES } from '../../work/features.ts';
import { LINE_KINDS, PRICE_ORIGINS } from '../../work/vocabulary.ts';
import { reads, writes } from '../base.ts';
import { Instant, maybeText } from '../fields.ts';
import { DecisionId, JobId, PartId, StaffId } from '../ids.ts';
import { JOB_CLOSED, VERDICTS } from './common.ts';

/** Decisions: what becomes of each part after strip and measure, who said so, and what follows from it. */

const Millimetres = z.number().positive('A size is more than zero.').max(500);

/** What the machine shop is to bring a part to, mm. */
const Size = z
  .strictObject({ low: Millimetres, high: Millimetres })
  .refine(({ low, high }) => low <= high, {
    path: ['high'],
    message: 'The band ends at or above where it begins.',
  });

/** Stock on the diameter that machining takes off to clean up, mm. */
const Allowance = z
  .number()
  .min(0, 'Stock to take off is zero or more.')
  .max(1, 'That is more stock than an oversize has; give it in millimetres on the diameter.')
  .default(USUAL_ALLOWANCE);

export const Decision = z.object({
  id: DecisionId,
  subject: z.enum(DECISION_SUBJECTS),
  /** From 1; 0 for what an engine has once. */
  cylinder: z.int(),
  choice: z.enum(DECISION_CHOICES),
  choiceLabel: z.string(),
  /** mm over or under nominal; null for choices without a step. */
  step: z.number().nullable(),
  machineTo: z.object({ low: z.number(), high: z.number() }).nullable(),
  reason: z.string(),
  by: z.string(),
  at: Instant,
  supersedes: DecisionId.nullable(),
});
export type Decision = z.infer<typeof Decision>;

const StockedPart = z.object({
  id: PartId,
  number: z.string(),
  description: z.string(),
  /** Thousandths. */
  onHand: z.int(),
});

const Step = z.object({
  /** mm over or under nominal. */
  step: z.number(),
  /** Null where the spec book has no band, or the part itself is not machined. */
  machineTo: z.object({ low: z.number(), high: z.number() }).nullable(),
  /** Parts of this step whose words name this engine model. */
  parts: z.array(StockedPart),
});

const FigureBeside = z.object({
  feature: z.enum(FEATURES),
  label: z.string(),
  place: z.string(),
  cylinder: z.int(),
  /** Base unit, as are the limits; to be shown in `unit`. */
  value: z.number(),
  /** Expanded (k = 2). */
  uncertainty: z.number(),
  verdict: z.enum(VERDICTS),
  low: z.number().nullable(),
  high: z.number().nullable(),
  unit: z.enum(UNITS),
});

export const PartToDecide = z.object({
  subject: z.enum(DECISION_SUBJECTS),
  cylinder: z.int(),
  label: z.string(),
  choices: z.array(z.object({ choice: z.enum(DECISION_CHOICES), label: z.string() })),
  /** As received; one a feature, the one that asks for most attention. */
  figures: z.array(FigureBeside),
  advice: z.object({
    /** Null where the figures settle nothing. */
    choice: z.enum(DECISION_CHOICES).nullable(),
    step: z.number().nullable(),
    reason: z.string(),
    grounds: z.enum(['figures', 'doubt', 'none']),
  }),
  /** Steps to choose from where a choice takes one. */
  steps: z.array(Step),
  standing: Decision.nullable(),
  /** Latest first. */
  superseded: z.array(Decision),
});
export type PartToDecide = z.infer<typeof PartToDecide>;

export const JobDecisions = z.object({
  jobId: JobId,
  /** Make and model; empty while no engine model is chosen. */
  engineModel: z.string(),
  cylinders: z.int(),
  allowance: z.number(),
  /** mm; those that are common and those that pistons are kept in. */
  oversizes: z.array(z.number()),
  parts: z.array(PartToDecide),
  closed: z.boolean(),
});
export type JobDecisions = z.infer<typeof JobDecisions>;

export const Proposal = z.object({
  kind: z.enum(LINE_KINDS),
  description: z.string(),
  partId: PartId.nullable(),
  partNumber: z.string(),
  /** Thousandths. */
  quantity: z.int(),
  unit: z.string(),
  /** Minor units; 0 while it is to be set. */
  unitPrice: z.int(),
  priceToSet: z.boolean(),
  /** What one costs the shop, minor units; null when nobody knows. */
  unitCost: z.int().nullable(),
  priceFrom: z.enum(PRICE_ORIGINS),
  /** Which decisions it comes from, and what has to be looked at. */
  note: z.string(),
});
export type Proposal = z.infer<typeof Proposal>;

export const decisions = {
  /** Every part with its figures, advice, and what was decided. */
  decisions: reads
    .input(z.strictObject({ jobId: JobId, allowance: Allowance }))
    .output(JobDecisions),

  decide: writes
    .errors({
      JOB_CLOSED,
      PART_UNKNOWN: {
        status: 409,
        message: 'This engine has no such part to decide on. Choose one of those on the page.',
      },
      CHOICE_UNSUITED: {
        status: 409,
        message: 'That cannot become of this part. Choose one of what is offered for it.',
        data: z.object({ choices: z.array(z.string()) }),
      },
      SUPERSEDED_ALREADY: {
        status: 409,
        message:
          'Somebody decided on this part meanwhile. Look at what stands now, then decide again if you see it otherwise.',
      },
      REASON_WANTED: {
        status: 409,
        message:
          'Say why in a few words: a stop, a choice against the advice, and one on a doubtful figure need a reason in writing.',
        data: z.object({ why: z.enum(['stop', 'against-advice', 'doubt']) }),
      },
    })
    .input(
      z.strictObject({
        by: StaffId,
        jobId: JobId,
        subject: z.enum(DECISION_SUBJECTS),
        cylinder: z.int().min(0).max(4),
        choice: z.enum(DECISION_CHOICES),
        /** mm over or under nominal; null takes the advised one. */
        step: z
          .number()
          .positive('An oversize or undersize is more than zero.')
          .max(
            Math.max(...COMMON_OVERSIZES) * 3,
            'That is more than any cylinder wall here can give; steps are in millimetres.',
          )
          .nullable()
          .default(null),
        /** Null takes the band of a new part, moved by the step. */
        machineTo: Size.nullable().default(null),
        allowance: Allowance,
        reason: maybeText(500),
        /** The decision on this part that stands, when there is one. */
        supersedes: DecisionId.nullable().default(null),
      }),
    )
    .output(JobDecisions),

  /** The estimate lines that follow from the decisions that stand; nothing is written. */
  proposals: reads.input(z.strictObject({ jobId: JobId })).output(
    z.object({
      lines: z.array(Proposal),
      /** A stop stands: the job is to be moved there by a person. */
      moveTo: z.literal('stopped').nullable(),
    }),
  ),
};
