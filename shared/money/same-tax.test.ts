import { expect, test } from 'vitest';
import { sameTaxTwice } from './same-tax.ts';

const tax = (
  name: string,
  place = '',
  from: string | null = null,
  until: string | null = null,
) => ({
  name,
  place,
  from,
  until,
});

test.each([
  ['none', [], null],
  ['two of other names', [tax('State tax'), tax('County tax')], null],
  ['two of one name, whatever its case', [tax('State tax'), tax('STATE  tax')], 1],
  ['one everywhere, one somewhere', [tax('Tax'), tax('Tax', 'Millbrook')], 1],
  ['two places', [tax('Tax', 'Harlow'), tax('Tax', 'Millbrook')], null],
  [
    'a rate that took the place of another',
    [tax('Tax', '', null, '2026-06-30'), tax('Tax', '', '2026-07-01')],
    null,
  ],
  [
    'a day on which both hold',
    [tax('Tax', '', null, '2026-07-01'), tax('Other'), tax('Tax', '', '2026-07-01')],
    2,
  ],
])('%s', (_, taxes, twice) => expect(sameTaxTwice(taxes)).toBe(twice));
