import { expect, test } from 'vitest';
import { SYMPTOMS } from '../../../shared/work/vocabulary.ts';
import { draftOf, factsOf } from './intake-draft.ts';

const facts = {
  complaint: 'Smokes',
  symptoms: [...SYMPTOMS],
  condition: 'Hood cracked',
  leftWith: ['Key', 'Bag'],
  fuel: 'Half full',
  lastService: '',
  engineHours: 210.5,
  reachBy: 'text' as const,
};
const draft = draftOf(facts);

test('what nobody touches is sent as it was', () => expect(factsOf(draft)).toEqual(facts));

test('words that name no symptom go with the condition', () =>
  expect(factsOf({ ...draft, symptoms: 'Knocks, whistles' })).toMatchObject({
    symptoms: ['knocks'],
    condition: 'Hood cracked\nAlso seen: whistles.',
  }));

test('hours may be left out, and are a number otherwise', () => {
  expect(factsOf({ ...draft, engineHours: ' ' })).toMatchObject({ engineHours: null });
  expect(factsOf({ ...draft, engineHours: 'many' })).toBeNull();
});
