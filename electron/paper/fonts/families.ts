/** `regular` for text, `strong` for headings and figures that count, `oblique` for remarks. */
export type Face = 'regular' | 'strong' | 'oblique';

/**
 * How letters become shapes. `plain`: one glyph for each character. `syllables`: letters of one syllable
 * are stacked, swapped or made into one shape, whatever stands beside it (Devanagari, emoji). `words`:
 * letters are moved or changed by their neighbours in the word, and keep their order (Arabic, Thai).
 */
type Setting = 'plain' | 'syllables' | 'words';

interface FontFamily extends Record<Face, string> {
  package: string;
  setting: Setting;
  /** Finds a letter that the family is there for. */
  letters: RegExp;
  /** Of the size that is asked for, where its letters are so tall that lines would touch. */
  scale?: number;
}

/** Scripts other than Latin, Greek and Cyrillic have no oblique: they stay upright. */
function noto(name: string, stem: string, setting: Setting, letters: RegExp): FontFamily {
  return {
    package: `@expo-google-fonts/${name}`,
    setting,
    letters,
    regular: `400Regular/${stem}_400Regular.ttf`,
    strong: `600SemiBold/${stem}_600SemiBold.ttf`,
    oblique: `400Regular/${stem}_400Regular.ttf`,
  };
}

const sans = (name: string, stem: string, setting: Setting, letters: RegExp) =>
  noto(`noto-sans-${name}`, `NotoSans${stem}`, setting, letters);

/**
 * The font files that papers are drawn with. Whoever packs the program needs these and no other file of
 * the packages. A stretch goes to the first family here that is there for its letters and covers them.
 */
export const FAMILIES = {
  base: {
    ...noto('noto-sans', 'NotoSans', 'plain', /[\p{scx=Latin}\p{scx=Greek}\p{scx=Cyrillic}]/u),
    oblique: '400Regular_Italic/NotoSans_400Regular_Italic.ttf',
  },
  devanagari: noto('noto-sans', 'NotoSans', 'syllables', /\p{scx=Devanagari}/u),
  arabic: sans('arabic', 'Arabic', 'words', /\p{scx=Arabic}/u),
  hebrew: sans('hebrew', 'Hebrew', 'words', /\p{scx=Hebrew}/u),
  thai: sans('thai', 'Thai', 'words', /\p{scx=Thai}/u),
  lao: sans('lao', 'Lao', 'words', /\p{scx=Lao}/u),
  khmer: sans('khmer', 'Khmer', 'syllables', /\p{scx=Khmer}/u),
  myanmar: {
    ...sans('myanmar', 'Myanmar', 'syllables', /\p{scx=Myanmar}/u),
    scale: 0.85,
  },
  bengali: sans('bengali', 'Bengali', 'syllables', /\p{scx=Bengali}/u),
  gurmukhi: sans('gurmukhi', 'Gurmukhi', 'syllables', /\p{scx=Gurmukhi}/u),
  gujarati: sans('gujarati', 'Gujarati', 'syllables', /\p{scx=Gujarati}/u),
  tamil: sans('tamil', 'Tamil', 'syllables', /\p{scx=Tamil}/u),
  telugu: sans('telugu', 'Telugu', 'syllables', /\p{scx=Telugu}/u),
  kannada: sans('kannada', 'Kannada', 'syllables', /\p{scx=Kannada}/u),
  malayalam: sans('malayalam', 'Malayalam', 'syllables', /\p{scx=Malayalam}/u),
  sinhala: sans('sinhala', 'Sinhala', 'syllables', /\p{scx=Sinhala}/u),
  georgian: sans('georgian', 'Georgian', 'plain', /\p{scx=Georgian}/u),
  armenian: sans('armenian', 'Armenian', 'plain', /\p{scx=Armenian}/u),
  ethiopic: sans('ethiopic', 'Ethiopic', 'plain', /\p{scx=Ethiopic}/u),
  korean: sans('kr', 'KR', 'plain', /[\p{scx=Hangul}\p{scx=Han}]/u),
  japanese: sans('jp', 'JP', 'plain', /[\p{scx=Hiragana}\p{scx=Katakana}\p{scx=Han}]/u),
  chinese: sans('sc', 'SC', 'plain', /[\p{scx=Bopomofo}\p{scx=Han}]/u),
  emoji: noto('noto-emoji', 'NotoEmoji', 'syllables', /\p{Extended_Pictographic}|\p{RI}|\u20e3/u),
} satisfies Record<string, FontFamily>;

export type Family = keyof typeof FAMILIES;

const HAN_BY_LANGUAGE: Record<string, Family> = { zh: 'chinese', ko: 'korean' };

/**
 * The families outside the base, in the order in which they are asked. Which Han font comes first follows
 * the locale: the same code point is drawn differently in Korea, Japan and China.
 */
export function familiesFor(locale: string): Family[] {
  const han = HAN_BY_LANGUAGE[locale.slice(0, 2).toLowerCase()] ?? 'japanese';
  const outside = Object.keys(FAMILIES).filter(
    (family): family is Family => family in FAMILIES && family !== 'base' && family !== han,
  );
  return [han, ...outside];
}
