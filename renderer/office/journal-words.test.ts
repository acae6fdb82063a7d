import { expect, test } from 'vitest';
import { contract } from '../../shared/contract/index.ts';
import { journalWords } from './journal-words.ts';

test('every call that names who did it has words in the journal', () => {
  const writing = Object.entries(contract).flatMap(([room, procedures]) =>
    Object.entries(procedures)
      .filter(([, procedure]) => 'STAFF_UNKNOWN' in procedure['~orpc'].errorMap)
      .map(([name]) => `${room}.${name}`),
  );
  expect(writing.length).toBeGreaterThan(10);
  expect(writing.filter((what) => journalWords(what) === what)).toEqual([]);
});
