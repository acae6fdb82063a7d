/** Closed lists of words about suppliers' price files that contract, desk and screens share. */

/** What a column of a price file may hold. */
export const PRICE_FILE_FIELDS = [
  'number',
  'description',
  'cost',
  'listPrice',
  'packSize',
  'coreCharge',
  'supersededBy',
] as const;
export type PriceFileField = (typeof PRICE_FILE_FIELDS)[number];

export const PRICE_FILE_FIELD_LABELS: Record<PriceFileField, string> = {
  number: 'Number',
  description: 'Description',
  cost: 'Cost',
  listPrice: 'List price',
  packSize: 'In a pack',
  coreCharge: 'Core charge',
  supersededBy: 'Replaced by',
};

export const TEXT_ENCODINGS = ['utf-8', 'utf-16le', 'utf-16be', 'windows-1252'] as const;
export type TextEncoding = (typeof TEXT_ENCODINGS)[number];

export const TEXT_ENCODING_LABELS: Record<TextEncoding, string> = {
  'utf-8': 'UTF-8',
  'utf-16le': 'UTF-16, low byte first',
  'utf-16be': 'UTF-16, high byte first',
  'windows-1252': 'Western European (Windows-1252)',
};

export const DELIMITERS = [',', ';', '\t', '|'] as const;
export type Delimiter = (typeof DELIMITERS)[number];

export const DELIMITER_LABELS: Record<Delimiter, string> = {
  ',': 'Comma',
  ';': 'Semicolon',
  '\t': 'Tab',
  '|': 'Upright bar',
};

export const DECIMAL_MARKS = ['.', ','] as const;
export type DecimalMark = (typeof DECIMAL_MARKS)[number];

export const DECIMAL_MARK_LABELS: Record<DecimalMark, string> = {
  '.': 'Point: 1234.50',
  ',': 'Comma: 1234,50',
};

/** What the prices in a file are for. */
export const PRICED_BY = ['one', 'pack'] as const;
export type PricedBy = (typeof PRICED_BY)[number];

export const PRICED_BY_LABELS: Record<PricedBy, string> = {
  one: 'One piece or unit',
  pack: 'A whole pack',
};

/** What a line of a price file means against what is known of the supplier. */
export const PRICE_CHANGES = [
  'new',
  'dearer',
  'cheaper',
  'unchanged',
  'superseded',
  'unreadable',
] as const;
export type PriceChangeKind = (typeof PRICE_CHANGES)[number];

export const PRICE_CHANGE_LABELS: Record<PriceChangeKind, string> = {
  new: 'New',
  dearer: 'Dearer',
  cheaper: 'Cheaper',
  unchanged: 'Unchanged',
  superseded: 'Superseded',
  unreadable: 'Can’t be used',
};

/** Why a line can't be used. */
export const LINE_PROBLEMS = [
  'quotes',
  'columns',
  'letters',
  'no-number',
  'number-too-long',
  'twice',
  'no-cost',
  'cost',
  'below-zero',
  'too-much',
  'list-price',
  'pack',
  'core-charge',
  'replaces-itself',
  'date',
] as const;
export type LineProblem = (typeof LINE_PROBLEMS)[number];

export const LINE_PROBLEM_SENTENCES: Record<LineProblem, string> = {
  quotes: 'A quotation mark is opened and not closed, or closed in the middle of a field.',
  columns: 'This line has more or fewer columns than the others.',
  letters: 'Letters of this line are damaged or can’t be read in this encoding.',
  'no-number': 'There is no part number.',
  'number-too-long': 'The part number is longer than 60 characters.',
  twice: 'This part number stands on an earlier line, which is the one that counts.',
  'no-cost': 'There is no cost, or a cost of nothing.',
  cost: 'The cost is not an amount.',
  'below-zero': 'An amount is below zero.',
  'too-much': 'An amount is larger than any price here can be.',
  'list-price': 'The list price is not an amount.',
  pack: 'What is in one pack is not a quantity above zero.',
  'core-charge': 'The core charge is not an amount.',
  'replaces-itself': 'The part is said to be replaced by itself.',
  date: 'The spreadsheet holds a date where a number should be.',
};
