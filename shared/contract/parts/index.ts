import { billedParts } from './billed-parts.ts';
import { cores } from './cores.ts';
import { counts } from './counts.ts';
import { fits } from './fits.ts';
import { jobParts } from './job-parts.ts';
import { kits } from './kits.ts';
import { labels } from './labels.ts';
import { movements } from './movements.ts';
import { numbers } from './numbers.ts';
import { orders } from './orders.ts';
import { partPhotos } from './part-photos.ts';
import { priceFiles } from './price-files.ts';
import { pricing } from './pricing.ts';
import { receiving } from './receiving.ts';
import { stockReports } from './reports.ts';
import { shelf } from './shelf.ts';
import { standing } from './standing.ts';
import { suggestions } from './suggestions.ts';
import { suppliers } from './suppliers.ts';

export * from './billed-parts.ts';
export * from './cores.ts';
export * from './counts.ts';
export * from './fits.ts';
export * from './job-parts.ts';
export * from './kits.ts';
export * from './labels.ts';
export * from './movements.ts';
export * from './numbers.ts';
export * from './orders.ts';
export * from './part.ts';
export * from './part-photos.ts';
export * from './price-files.ts';
export * from './receiving.ts';
export * from './refusals.ts';
export * from './reports.ts';
export * from './shelf.ts';
export * from './standing.ts';
export * from './suggestions.ts';
export * from './suppliers.ts';

/** The parts room: what is on the shelf, promised and on order. Quantities are whole thousandths of a part's unit. */
export const parts = {
  ...shelf,
  ...pricing,
  ...movements,
  ...numbers,
  ...fits,
  ...kits,
  ...partPhotos,
  ...standing,
  ...jobParts,
  ...billedParts,
  ...suppliers,
  ...suggestions,
  ...receiving,
  ...orders,
  ...cores,
  ...priceFiles,
  ...counts,
  ...labels,
  ...stockReports,
};
