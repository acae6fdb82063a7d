import { expect, it } from 'vitest';
import { readContact } from './contact.ts';

it.each([
  ['312 555 0199 lucja@example.org', '312 555 0199', 'lucja@example.org'],
  ['lucja@example.org, +48 22 555 01 99', '+48 22 555 01 99', 'lucja@example.org'],
  ['(312) 555-0199', '(312) 555-0199', ''],
  ['lucja@example.org', '', 'lucja@example.org'],
  ['  ', '', ''],
  ['0199; wrong@', '0199', 'wrong@'],
])('reads %j', (typed, phone, email) => {
  expect(readContact(typed)).toEqual({ phone, email });
});
