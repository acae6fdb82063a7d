import type {
  Fastener,
  SPECIFICATION_UNITS,
  Specification,
} from '../../shared/contract/specbook.ts';
import { type NamedThread, parseThread } from '../../shared/trade/index.ts';
import { isTorque, needsFastener } from '../../shared/work/bench/torque-check.ts';
import { FEATURE_UNITS, type Feature } from '../../shared/work/features.ts';
import { threadWords } from '../../shared/work/specbook/fastener-words.ts';
import { decimal } from '../common/measure/decimal.ts';
import { NO_SOURCE, type SourceDraft } from './source-choice.tsx';

export type BookUnit = (typeof SPECIFICATION_UNITS)[number];

/** A specification as it is being typed. */
export interface SpecificationDraft extends SourceDraft {
  low: string;
  high: string;
  aim: string;
  wearLimit: string;
  unit: BookUnit;
  condition: string;
  /** The bolts that a torque is for are known, and written out. */
  bolted: boolean;
  /** The thread as the source prints it; empty when only diameter and pitch are known. */
  designation: string;
  diameter: string;
  pitch: string;
  propertyClass: string;
  count: string;
  pattern: Fastener['pattern'];
  /** In percent, separated by blanks. */
  stages: string;
}

/** Which thread and how many is for the source to say: a guess would go into the book as if it were read there. */
const NO_FASTENER = {
  designation: '',
  diameter: '',
  pitch: '',
  propertyClass: '8.8',
  count: '',
  pattern: 'cross',
  stages: '50 75 100',
} as const;

/**
 * A new draft, or the current revision to be amended.
 * @param usualSource the source that lies open, for a new draft; empty when nobody knows
 */
export function draftOf(
  feature: Feature,
  current: Specification | null,
  usualSource: string,
): SpecificationDraft {
  if (current === null)
    return {
      ...NO_SOURCE,
      ...NO_FASTENER,
      sourceId: usualSource,
      low: '',
      high: '',
      aim: '',
      wearLimit: '',
      unit: FEATURE_UNITS[feature],
      condition: '',
      bolted: needsFastener(feature),
    };
  const { low, high, aim, wearLimit, unit, condition, page, source, fastener } = current;
  return {
    ...NO_SOURCE,
    sourceId: source.id,
    page,
    low,
    high,
    aim,
    wearLimit,
    unit,
    condition,
    bolted: fastener !== null,
    ...(fastener === null
      ? NO_FASTENER
      : {
          designation: threadWords(fastener),
          diameter: String(fastener.diameter),
          pitch: String(fastener.pitch),
          propertyClass: fastener.propertyClass,
          count: String(fastener.count),
          pattern: fastener.pattern,
          stages: fastener.stages.map((share) => share * 100).join(' '),
        }),
  };
}

/** The thread that a designation names; null while it names none. */
export function threadTyped(designation: string): NamedThread | null {
  try {
    return designation.trim() === '' ? null : parseThread(designation);
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}

/** The fastener group of a draft; null for a feature that has none or while a figure can't be read. */
export function fastenerOf(feature: Feature, draft: SpecificationDraft): Fastener | null {
  const stages = draft.stages
    .split(/[\s;%]+/)
    .filter((word) => word !== '')
    .map(decimal);
  const named = threadTyped(draft.designation);
  const diameter = named?.diameter ?? decimal(draft.diameter);
  const pitch = named?.pitch ?? decimal(draft.pitch);
  const count = decimal(draft.count);
  if (!isTorque(feature) || !draft.bolted || diameter === null || pitch === null || count === null)
    return null;
  if (draft.designation.trim() !== '' && named === null) return null;
  return {
    designation: draft.designation.trim(),
    diameter,
    pitch,
    propertyClass: draft.propertyClass,
    count,
    pattern: draft.pattern,
    stages: stages.map((percent) => (percent ?? 0) / 100),
  };
}
