import { expect, it } from 'vitest';
import { isSentence } from './written-reason.ts';

it.each([
  'The cap was checked when the rod was fitted.',
  'Head stayed on: only the carburetor was off.',
  'Kunde bringt eigene Kopfschrauben mit',
  '缸头没有拆下,只修理了化油器。',
])('takes a sentence: %s', (text) => expect(isSentence(text)).toBe(true));

it.each([
  '',
  'ok',
  'all fine',
  'a b c d',
  'fine fine fine fine fine',
  '1234 5678 9012 3456',
  'Built elsewhere',
])('refuses what says nothing: %s', (text) => expect(isSentence(text)).toBe(false));
