import { describe, expect, it } from 'vitest';
import { joinMakeAndModel, splitMakeAndModel } from './make-and-model.ts';

describe('a plate read in one breath', () => {
  it.each([
    ['Brackwater T-50', [], { make: 'Brackwater', model: 'T-50' }],
    ['Brackwater  T-50 HD ', [], { make: 'Brackwater', model: 'T-50 HD' }],
    ['Old Mill, T-50', [], { make: 'Old Mill', model: 'T-50' }],
    ['old mill T-50', ['Old Mill'], { make: 'old mill', model: 'T-50' }],
    ['Old Mill', ['Old Mill'], { make: 'Old Mill', model: '' }],
    ['Żubr 4', ['zubr'], { make: 'Żubr', model: '4' }],
    ['Brackwater', [], { make: 'Brackwater', model: '' }],
    ['', ['Old Mill'], { make: '', model: '' }],
  ])('%j with makes %j', (text, makes, plate) => {
    expect(splitMakeAndModel(text, makes)).toEqual(plate);
  });

  it('comes back the same after it was joined', () => {
    const plates = [
      { make: 'Old Mill', model: 'T-50' },
      { make: 'Brackwater', model: 'T 50' },
      { make: 'Old Mill', model: '' },
    ];
    for (const plate of plates)
      expect(splitMakeAndModel(joinMakeAndModel(plate), [plate.make])).toEqual(plate);
  });
});
