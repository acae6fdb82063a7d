/** What has to be settled, or passed over in writing, before a machine goes out. */

/** What may be passed over, with a reason that stands on the work order. */
export const PASSABLE_MATTERS = [
  'parts-billed',
  'parts-issued',
  'readings-missing',
  'readings-outside',
  'speeds',
  'unpriced',
] as const;
export type PassableMatter = (typeof PASSABLE_MATTERS)[number];
