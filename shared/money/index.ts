export { allocate } from './allocate.ts';
export { sumMinor } from './amount.ts';
export {
  type BillLine,
  type BillRules,
  type BillTax,
  type BillTotals,
  billTotals,
  roundingSentence,
  SECURITY,
  TAX_BASES,
  type TaxBasis,
} from './bill.ts';
export { type BillMargin, billMargin, type CostedLine, lineCost } from './bill-margin.ts';
export { creditTotals, type IssuedBill } from './credit.ts';
export { creditedLine } from './credited-line.ts';
export { type BillTerms, type DrawnLine, drawUp } from './draw-up.ts';
export { decimalMark, editableMoney, editableQuantity } from './editable.ts';
export { formatQuantity, formatRate } from './figures.ts';
export { formatMoney, minorDigits, minorToDecimal } from './format.ts';
export {
  type DiscountRule,
  discountOn,
  lineAmount,
  lineFigures,
  type PricedQuantity,
} from './line.ts';
export { lineCreditsOf } from './line-credits.ts';
export { marginPpm, markupPpm, priceAtMarkup } from './margin.ts';
export { atNoCharge } from './no-charge.ts';
export { parseMoney, parseQuantity } from './parse.ts';
export { type CostBracket, markupFor, type PricedPart, partPrice } from './part-price.ts';
export { divideRounded, ROUNDINGS, type Rounding } from './round.ts';
export { sameTaxTwice } from './same-tax.ts';
export { settle } from './settle.ts';
export { isByRule, type SuppliesRule, suppliesCharge } from './supplies.ts';
export { exemptionOn, type KeptTax, type TaxedParty, taxesFor } from './taxes-for.ts';
