import { eq } from 'drizzle-orm';
import type { Shop } from '../../../shared/contract/office.ts';
import type { BillTerms, CustomerTerms } from '../../../shared/contract/till/index.ts';
import { exemptionOn, taxesFor } from '../../../shared/money/index.ts';
import { addDays } from '../../../shared/work/calendar.ts';
import { customerTerms, job } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';
import { tillRulesOf } from './rules.ts';

/** Who pays tax as everybody here, and pays at once. */
const USUAL_TERMS: CustomerTerms = {
  taxPlace: '',
  exemptCertificate: '',
  exemptUntil: null,
  onAccount: false,
  termsDays: 0,
  creditLimit: null,
};

/** On what terms a customer is billed; without one, as everybody. */
export function customerTermsOf(store: ReadStore, customerId: string | null): CustomerTerms {
  if (customerId === null) return USUAL_TERMS;
  const row = store
    .select()
    .from(customerTerms)
    .where(eq(customerTerms.customerId, customerId))
    .get();
  if (row === undefined) return USUAL_TERMS;
  const { customerId: _customerId, ...terms } = row;
  return terms;
}

/** On what terms a job is billed on a day; without a job, as everybody is. */
export function billTermsOf(
  store: ReadStore,
  shop: Shop,
  jobId: string | null,
  day: string,
): BillTerms {
  const customer =
    jobId === null
      ? undefined
      : store.select({ id: job.customerId }).from(job).where(eq(job.id, jobId)).get();
  const party = customerTermsOf(store, customer?.id ?? null);
  const { supplies, pricesIncludeTax, estimateDays } = tillRulesOf(store);
  const { charged, exempted } = taxesFor(shop.taxes, party, day);
  const ruled = (taxes: typeof charged) =>
    taxes.map(({ name, ratePpm, kinds }) => ({ name, ratePpm, kinds }));
  return {
    rounding: shop.rounding,
    taxBasis: shop.taxBasis,
    taxes: ruled(charged),
    pricesIncludeTax,
    exemptBy: exemptionOn(party, day),
    takenOut: pricesIncludeTax ? ruled(exempted) : [],
    supplies,
    validUntil: estimateDays === null ? null : addDays(day, estimateDays),
  };
}
