import { fold } from '../../../shared/work/fold.ts';
import { SYMPTOM_LABELS, SYMPTOMS, type Symptom } from '../../../shared/work/vocabulary.ts';

/** What else people at a counter type for a symptom; matched from the beginning, like the labels. */
const ALSO: Record<Symptom, readonly string[]> = {
  'will-not-start': ['won’t start', 'no start', 'does not start', 'doesn’t start', 'dead'],
  'hard-to-start': ['starts badly', 'starts hard'],
  'no-spark': ['spark'],
  'low-power': ['power', 'weak', 'no power'],
  'stops-when-hot': ['stalls hot', 'dies when hot', 'hot'],
  hunts: ['surges', 'speed swings', 'uneven'],
  smokes: ['blue smoke', 'black smoke', 'white smoke'],
  knocks: ['knocking', 'rattles inside'],
  'burns-oil': ['uses oil', 'oil burn'],
  'leaks-oil': ['oil leak'],
  'leaks-fuel': ['fuel leak', 'petrol leak', 'gas leak'],
  'recoil-broken': ['recoil', 'rope', 'pull start', 'starter rope'],
  seized: ['stuck', 'locked up', 'will not turn', 'won’t turn'],
};

/** Apostrophes are left out when people type fast: 'wont start'. */
const plain = (text: string): string => fold(text).replace(/['’]/g, '');

const names = (symptom: Symptom): string[] => [
  SYMPTOM_LABELS[symptom],
  symptom.replaceAll('-', ' '),
  ...ALSO[symptom],
];

/** The symptoms that a few typed letters can mean, the closest first. */
export function symptomsFor(word: string): Symptom[] {
  const wanted = plain(word);
  if (wanted === '') return [...SYMPTOMS];
  const labelled = SYMPTOMS.filter((symptom) => plain(SYMPTOM_LABELS[symptom]).startsWith(wanted));
  const named = SYMPTOMS.filter((symptom) =>
    names(symptom).some((name) => plain(name).startsWith(wanted)),
  );
  return [...new Set([...labelled, ...named])];
}

/** Pieces of a line that commas or semicolons part. */
export const pieces = (text: string): string[] =>
  text
    .split(/[,;、،]/)
    .map((piece) => piece.trim())
    .filter(Boolean);

/**
 * What a typed line says: symptoms of the list, and the words that are none of them, which are kept and
 * go with the condition. Two letters at least, so that a stray one names nothing.
 */
export function readSymptoms(text: string): { symptoms: Symptom[]; otherWords: string[] } {
  const symptoms: Symptom[] = [];
  const otherWords: string[] = [];
  for (const piece of pieces(text)) {
    const [first] = piece.length < 2 ? [] : symptomsFor(piece);
    if (first === undefined) otherWords.push(piece);
    else if (!symptoms.includes(first)) symptoms.push(first);
  }
  return { symptoms, otherWords };
}
