export { allocate } from './allocate.ts';
export {
  type BillLine,
  type BillRules,
  type BillTax,
  type BillTotals,
  billTotals,
  roundingSentence,
  TAX_BASES,
  type TaxBasis,
} from './bill.ts';
export { decimalMark, editableMoney, editableQuantity } from './editable.ts';
export { formatQuantity, formatRate } from './figures.ts';
export { formatMoney, minorDigits, minorToDecimal } from './format.ts';
export { lineAmount, type PricedQuantity } from './line.ts';
export { marginPpm, priceAtMarkup } from './margin.ts';
export { parseMoney, parseQuantity } from './parse.ts';
export { divideRounded, ROUNDINGS, type Rounding } from './round.ts';
