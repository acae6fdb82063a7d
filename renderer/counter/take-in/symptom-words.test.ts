import { describe, expect, it } from 'vitest';
import { SYMPTOM_LABELS, SYMPTOMS } from '../../../shared/work/vocabulary.ts';
import { readSymptoms, symptomsFor } from './symptom-words.ts';

describe('symptoms typed in a hurry', () => {
  it.each([
    ['won', ['will-not-start']],
    ['won’t start, smokes', ['will-not-start', 'smokes']],
    ['wont start; recoil', ['will-not-start', 'recoil-broken']],
    ['leaks oil, leaks fuel,', ['leaks-oil', 'leaks-fuel']],
    ['surges', ['hunts']],
    ['smokes, blue smoke', ['smokes']],
  ])('%j', (typed, symptoms) => {
    expect(readSymptoms(typed)).toEqual({ symptoms, otherWords: [] });
  });

  it('keeps words that are no symptom of the list', () => {
    expect(readSymptoms('smokes, paint peels')).toEqual({
      symptoms: ['smokes'],
      otherWords: ['paint peels'],
    });
    expect(readSymptoms('s')).toEqual({ symptoms: [], otherWords: ['s'] });
    expect(readSymptoms(' , ;')).toEqual({ symptoms: [], otherWords: [] });
  });

  it('finds every symptom by its whole label first', () => {
    for (const symptom of SYMPTOMS) expect(symptomsFor(SYMPTOM_LABELS[symptom])[0]).toBe(symptom);
  });
});
