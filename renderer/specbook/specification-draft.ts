import type {
  Fastener,
  SPECIFICATION_UNITS,
  Specification,
} from '../../shared/contract/specbook.ts';
import { FEATURE_UNITS, type Feature } from '../../shared/work/features.ts';
import { isTorque, needsFastener } from '../../shared/work/torque-check.ts';
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
  diameter: string;
  pitch: string;
  propertyClass: string;
  count: string;
  pattern: Fastener['pattern'];
  /** In percent, separated by blanks. */
  stages: string;
}

const USUAL_FASTENER = {
  diameter: '8',
  pitch: '1.25',
  propertyClass: '8.8',
  count: '4',
  pattern: 'cross',
  stages: '50 75 100',
} as const;

/** A new draft: empty, or the current revision to be amended. */
export function draftOf(feature: Feature, current: Specification | null): SpecificationDraft {
  if (current === null)
    return {
      ...NO_SOURCE,
      ...USUAL_FASTENER,
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
      ? USUAL_FASTENER
      : {
          diameter: String(fastener.diameter),
          pitch: String(fastener.pitch),
          propertyClass: fastener.propertyClass,
          count: String(fastener.count),
          pattern: fastener.pattern,
          stages: fastener.stages.map((share) => share * 100).join(' '),
        }),
  };
}

/** The fastener group of a draft; null for a feature that has none or while a figure can't be read. */
export function fastenerOf(feature: Feature, draft: SpecificationDraft): Fastener | null {
  const stages = draft.stages
    .split(/[\s;%]+/)
    .filter((word) => word !== '')
    .map(decimal);
  const diameter = decimal(draft.diameter);
  const pitch = decimal(draft.pitch);
  const count = decimal(draft.count);
  if (!isTorque(feature) || !draft.bolted || diameter === null || pitch === null || count === null)
    return null;
  return {
    diameter,
    pitch,
    propertyClass: draft.propertyClass,
    count,
    pattern: draft.pattern,
    stages: stages.map((percent) => (percent ?? 0) / 100),
  };
}
