/** Closed lists of words of the parts room that contract, store and screens share. */

export const MOVEMENT_KINDS = [
  'received',
  'reserved',
  'released',
  'issued',
  'returned',
  'scrapped',
  'counted',
  'adjusted',
  'ordered',
  'order-closed',
  'kit-opened',
] as const;
export type MovementKind = (typeof MOVEMENT_KINDS)[number];

export const MOVEMENT_KIND_LABELS: Record<MovementKind, string> = {
  received: 'Received',
  reserved: 'Promised to a job',
  released: 'Promise taken back',
  issued: 'Issued to a job',
  returned: 'Returned from a job',
  scrapped: 'Scrapped',
  counted: 'Counted',
  adjusted: 'Put right',
  ordered: 'Ordered',
  'order-closed': 'Order closed short',
  'kit-opened': 'Kit opened',
};

export const PART_NUMBER_KINDS = ['maker', 'supplier', 'former', 'barcode'] as const;
export type PartNumberKind = (typeof PART_NUMBER_KINDS)[number];

export const PART_NUMBER_KIND_LABELS: Record<PartNumberKind, string> = {
  maker: 'Maker’s number',
  supplier: 'Supplier’s number',
  former: 'Former number',
  barcode: 'Barcode',
};

export const PRICE_FILE_STATES = ['reading', 'read', 'stopped', 'applied', 'undone'] as const;
export type PriceFileState = (typeof PRICE_FILE_STATES)[number];

export const PRICE_FILE_STATE_LABELS: Record<PriceFileState, string> = {
  reading: 'Being read',
  read: 'Read, not applied',
  stopped: 'Stopped',
  applied: 'Applied',
  undone: 'Undone',
};
