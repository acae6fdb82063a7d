import { expect, test } from 'vitest';
import { contract } from '../../shared/contract/index.ts';
import { journalFacts, journalWords } from './journal-words.ts';

test('every call that names who did it has words in the journal', () => {
  const writing = Object.entries(contract).flatMap(([room, procedures]) =>
    Object.entries(procedures)
      .filter(([, procedure]) => 'STAFF_UNKNOWN' in procedure['~orpc'].errorMap)
      .map(([name]) => `${room}.${name}`),
  );
  expect(writing.length).toBeGreaterThan(10);
  expect(writing.filter((what) => journalWords(what) === what)).toEqual([]);
});

test('particulars are pairs; ids and fingerprints are shortened, empty ones left out', () => {
  const detail = JSON.stringify({
    job: '01a21222-041d-73c9-9c5b-88b4d7a023dc',
    formerName: 'Ann',
    reason: '',
    amount: 1250,
  });
  expect(journalFacts(detail)).toEqual([
    { name: 'job', value: '01a21222-041d…' },
    { name: 'former name', value: 'Ann' },
    { name: 'amount', value: '1250' },
  ]);
  expect(journalFacts('plain words')).toEqual([{ name: '', value: 'plain words' }]);
});
