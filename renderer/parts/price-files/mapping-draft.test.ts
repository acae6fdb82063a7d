import { expect, test } from 'vitest';
import type { PriceFileSketch } from '../../../shared/contract/parts/index.ts';
import { draftFrom, mappingOf, withField } from './mapping-draft.ts';

const SKETCH: PriceFileSketch = {
  kind: 'text',
  encoding: 'utf-8',
  delimiter: ';',
  sheets: [],
  sheet: '',
  decimalMark: ',',
  pricedBy: 'one',
  headingLines: 1,
  headings: ['Art', 'Text', 'Netto'],
  sample: [],
  columns: {
    number: null,
    description: 1,
    cost: 2,
    listPrice: null,
    packSize: null,
    coreCharge: null,
    supersededBy: null,
  },
  columnsFrom: 'headings',
};

test('a mapping is whole once number and cost have a column each, and no two share one', () => {
  const draft = draftFrom(SKETCH);
  expect(draft.fields).toEqual([null, 'description', 'cost']);
  expect(mappingOf(draft, SKETCH)).toBeNull();
  const whole = withField(draft, 0, 'number');
  expect(mappingOf(whole, SKETCH)).toMatchObject({
    headingLines: 1,
    decimalMark: ',',
    columns: {
      number: { column: 0, heading: 'Art' },
      cost: { column: 2, heading: 'Netto' },
      description: { column: 1, heading: 'Text' },
      listPrice: null,
    },
  });
  expect(withField(whole, 1, 'number').fields).toEqual([null, 'number', 'cost']);
  expect(withField(whole, 1, null).fields).toEqual(['number', null, 'cost']);
});
