import type { RevisedField } from '../../shared/work/specbook/revision-changes.ts';

/** What people read for a part of a specification that a revision changed. */
export const FIELD_LABELS: Record<RevisedField, string> = {
  low: 'Low',
  high: 'High',
  aim: 'Aim',
  wearLimit: 'Wear limit',
  unit: 'Unit',
  condition: 'Condition',
  page: 'Page',
  source: 'Source',
  fastener: 'Bolts',
};
