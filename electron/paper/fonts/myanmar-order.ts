/**
 * The order in which a Burmese syllable is drawn: the vowel sign e and the medial ra stand before their
 * consonant, and a kinzi, which is written before it, stands on top (Unicode, The Standard, ch. 16.3).
 */
const SYLLABLE =
  /^(?<kinzi>[\u1004\u101b\u105a]\u103a\u1039)?(?<base>\p{L}(?:\u1039\p{L})*)(?<marks>\p{M}*)$/u;
const MEDIAL_RA = '\u103c';
const VOWEL_E = '\u1031';

/** Features that fonts keep for Burmese, in the order of the OpenType specification for the script. */
export const MYANMAR_FEATURES = ['rphf', 'pref', 'blwf', 'pstf', 'pres', 'abvs', 'blws', 'psts'];

export function myanmarOrder(syllable: string): string {
  const { kinzi = '', base, marks } = SYLLABLE.exec(syllable)?.groups ?? {};
  if (base === undefined || marks === undefined) return syllable;
  const before = [VOWEL_E, MEDIAL_RA].filter((mark) => marks.includes(mark)).join('');
  return before + base + kinzi + marks.replaceAll(/[\u1031\u103c]/g, '');
}
