import type { BillTax } from './bill.ts';

/** A tax as the shop keeps it: where and when it is charged. Dates are ISO calendar dates. */
export interface KeptTax extends BillTax {
  /** Empty: everywhere. */
  readonly place: string;
  readonly from: string | null;
  readonly until: string | null;
}

/** What bears on a customer's taxes. */
export interface TaxedParty {
  readonly taxPlace: string;
  /** Number of the certificate, or empty for who pays tax. */
  readonly exemptCertificate: string;
  /** The last day that it holds; null when it has no end. */
  readonly exemptUntil: string | null;
}

/** The certificate by which a customer pays no tax on a day, or empty. */
export const exemptionOn = (party: TaxedParty, day: string): string =>
  party.exemptUntil === null || day <= party.exemptUntil ? party.exemptCertificate : '';

/** The taxes of a customer's place on a day: charged, unless the customer is exempt that day. */
export function taxesFor<Tax extends KeptTax>(
  taxes: readonly Tax[],
  party: TaxedParty,
  day: string,
): { charged: Tax[]; exempted: Tax[] } {
  const here = taxes.filter(
    ({ place, from, until }) =>
      (place === '' || place === party.taxPlace) &&
      (from === null || from <= day) &&
      (until === null || day <= until),
  );
  return exemptionOn(party, day) === ''
    ? { charged: here, exempted: [] }
    : { charged: [], exempted: here };
}
