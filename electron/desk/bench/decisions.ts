import { decision as decisionTable } from '../../../db/schema/index.ts';
import type { Decision, JobDecisions, PartToDecide } from '../../../shared/contract/bench/index.ts';
import { adviceOn, figuresBeside } from '../../../shared/work/bench/deciding/decision-advice.ts';
import {
  type FittedPart,
  fittingParts,
} from '../../../shared/work/bench/deciding/decision-parts.ts';
import {
  choiceLabel,
  choicesFor,
  type DecisionPart,
  isMachined,
  partLabel,
  takesStep,
  whyReasonIsWanted,
} from '../../../shared/work/bench/deciding/decision-rules.ts';
import { machineTo, type Size } from '../../../shared/work/bench/deciding/decision-sizes.ts';
import type {
  DecisionChoice,
  DecisionSubject,
} from '../../../shared/work/bench/deciding/decisions.ts';
import { FEATURE_LABELS } from '../../../shared/work/features.ts';
import { os } from '../implementer.ts';
import { badInput, found } from '../refuse.ts';
import { write } from '../writing.ts';
import { factsOf, type JobFacts } from './decision-facts.ts';

/** What goes with a step: the pistons for a bore, the rods for a crankpin. */
const GOES_WITH: Partial<Record<DecisionSubject, { part: FittedPart; sign: 1 | -1 }>> = {
  cylinder: { part: 'piston', sign: 1 },
  piston: { part: 'piston', sign: 1 },
  rings: { part: 'rings', sign: 1 },
  crankshaft: { part: 'connecting-rod', sign: -1 },
  'connecting-rod': { part: 'connecting-rod', sign: -1 },
};

const isOf = (part: DecisionPart) => (other: DecisionPart) =>
  other.subject === part.subject && other.cylinder === part.cylinder;

/** The band of a new part, moved by the step; null for a part that is bought and not machined. */
function usualSize(
  subject: DecisionSubject,
  choice: DecisionChoice,
  step: number,
  { newBore, newPin }: JobFacts,
): Size | null {
  if (!isMachined(subject, choice)) return null;
  return choice === 'undersize' ? machineTo(newPin, -step) : machineTo(newBore, step);
}

function stepsOf(subject: DecisionSubject, facts: JobFacts): PartToDecide['steps'] {
  const choice = choicesFor(subject).find(takesStep);
  const goesWith = GOES_WITH[subject];
  if (choice === undefined || goesWith === undefined) return [];
  const steps = choice === 'undersize' ? facts.undersizes : facts.oversizes;
  return steps.map((step) => ({
    step,
    machineTo: usualSize(subject, choice, step, facts),
    parts: fittingParts(facts.shelf, {
      part: goesWith.part,
      step: goesWith.sign * step,
      models: facts.models,
    }).map(({ id, number, description, onHand }) => ({ id, number, description, onHand })),
  }));
}

function partToDecide(part: DecisionPart, facts: JobFacts): PartToDecide {
  const { subject, cylinder } = part;
  const standing = facts.standing.find(isOf(part)) ?? null;
  return {
    subject,
    cylinder,
    label: partLabel(part, facts.sheet.cylinders),
    choices: choicesFor(subject).map((choice) => ({ choice, label: choiceLabel(subject, choice) })),
    figures: figuresBeside(part, facts).map(({ placeLabel, ...figure }) => ({
      ...figure,
      label: FEATURE_LABELS[figure.feature],
      place: placeLabel,
    })),
    advice: adviceOn(part, facts),
    steps: stepsOf(subject, facts),
    standing,
    superseded: facts.all.filter((each) => isOf(part)(each) && each.id !== standing?.id).reverse(),
  };
}

function jobDecisions(facts: JobFacts): JobDecisions {
  const { sheet } = facts;
  const { engineModel } = sheet;
  return {
    jobId: sheet.jobId,
    engineModel: engineModel === null ? '' : `${engineModel.make} ${engineModel.model}`,
    cylinders: sheet.cylinders,
    allowance: facts.allowance,
    oversizes: [...facts.oversizes],
    parts: facts.parts.map((part) => partToDecide(part, facts)),
    closed: sheet.closed,
  };
}

export const decisions = os.bench.decisions.handler(({ input, context }) =>
  jobDecisions(factsOf(context.store.read, input.jobId, input.allowance)),
);

interface Chosen extends DecisionPart {
  choice: DecisionChoice;
  step: number | null;
  machineTo: Size | null;
}

/** The step and size that a choice goes with; those that it can't go with are named at their fields. */
function sized(input: Chosen, facts: JobFacts): { step: number | null; machineTo: Size | null } {
  const { subject, choice } = input;
  if (!takesStep(choice)) {
    if (input.step !== null)
      throw badInput([{ path: 'step', message: 'This choice has no oversize or undersize.' }]);
    if (input.machineTo !== null)
      throw badInput([{ path: 'machineTo', message: 'This choice machines nothing to a size.' }]);
    return { step: null, machineTo: null };
  }
  const advice = adviceOn(input, facts);
  const step = input.step ?? (advice.choice === choice ? advice.step : null);
  if (step === null)
    throw badInput([{ path: 'step', message: 'Say which oversize or undersize, in millimetres.' }]);
  if (!isMachined(subject, choice) && input.machineTo !== null)
    throw badInput([{ path: 'machineTo', message: 'This part is bought and not machined.' }]);
  return { step, machineTo: input.machineTo ?? usualSize(subject, choice, step, facts) };
}

/** Words, not a dot: as long as an override's. */
const SHORTEST_REASON = 5;

export const decide = os.bench.decide.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, ({ store, staff, at, newId, note }) => {
    const { jobId, subject, cylinder, choice, reason, supersedes } = input;
    const facts = factsOf(store, jobId, input.allowance);
    if (facts.sheet.closed) throw errors.JOB_CLOSED();
    if (!facts.parts.some(isOf(input))) throw errors.PART_UNKNOWN();
    const choices = choicesFor(subject);
    if (!choices.includes(choice))
      throw errors.CHOICE_UNSUITED({
        data: { choices: choices.map((each) => choiceLabel(subject, each)) },
      });
    const standing: Decision | undefined = facts.standing.find(isOf(input));
    if (supersedes !== null)
      found(
        facts.all.find(({ id }) => id === supersedes),
        'decision',
      );
    if ((standing?.id ?? null) !== supersedes) throw errors.SUPERSEDED_ALREADY();

    const { step, machineTo: size } = sized(input, facts);
    const advice = adviceOn(input, facts);
    const why = whyReasonIsWanted({ choice, step }, advice);
    if (why !== null && reason.length < SHORTEST_REASON)
      throw errors.REASON_WANTED({ data: { why } });

    const id = newId();
    store
      .insert(decisionTable)
      .values({
        id,
        jobId,
        subject,
        cylinder,
        choice,
        step,
        machineToLow: size?.low ?? null,
        machineToHigh: size?.high ?? null,
        reason,
        supersedes,
        by: staff.id,
        at,
      })
      .run();
    note({
      job: jobId,
      decision: id,
      subject,
      cylinder,
      choice,
      step,
      advised: advice.choice,
      advice: advice.reason,
      reason,
      supersedes,
    });
    return jobDecisions(factsOf(store, jobId, input.allowance));
  }),
);
