import type { Shop } from '../../../../shared/contract/office.ts';

/** What a report of the stores is made for. Dates are ISO calendar dates, both of them within. */
export interface StockAsked {
  readonly shop: Shop;
  readonly from: string;
  readonly to: string;
  /** Now: UTC, ISO 8601. */
  readonly at: string;
}
