/** Stands, visibly, where no font has the character. */
export const REPLACEMENT = '\ufffd';

/**
 * Text made ready for drawing: composed (NFC), line ends as `\n`, and without characters that have no
 * shape of their own but can turn or hide what stands around them (direction overrides, stray joiners).
 * Control characters become the visible replacement.
 */
export function drawable(text: string): string {
  return text
    .toWellFormed()
    .normalize('NFC')
    .replaceAll(/\r\n?|[\u2028\u2029\u0085\v\f]/g, '\n')
    .replaceAll('\t', ' ')
    .replaceAll(/\p{Default_Ignorable_Code_Point}/gu, (character, at: number, whole: string) =>
      isNeeded(character, whole.slice(Math.max(0, at - 16), at), whole.slice(at + 1, at + 2))
        ? character
        : '',
    )
    .replaceAll(/[^\P{Cc}\n]/gu, REPLACEMENT);
}

/** Arabic, Indic and Khmer letters, which look different beside a joiner or a non-joiner. */
const TAKES_JOINERS =
  /[\p{scx=Arab}\p{scx=Deva}\p{scx=Beng}\p{scx=Guru}\p{scx=Gujr}\p{scx=Taml}\p{scx=Telu}\p{scx=Knda}\p{scx=Mlym}\p{scx=Sinh}\p{scx=Khmr}\p{scx=Mymr}]$/u;
const EMOJI = /(?:\p{Extended_Pictographic}\ufe0f?|\p{Emoji_Modifier})$/u;
/** The black flag, and the letters that say of which region. */
const REGION_FLAG = /\u{1f3f4}[\u{e0020}-\u{e007e}]*$/u;

/** Whether what stands beside a character without a shape depends on it. */
function isNeeded(character: string, before: string, after: string): boolean {
  if (character === '\u200d') return TAKES_JOINERS.test(before) || EMOJI.test(before);
  if (character === '\u200c') return TAKES_JOINERS.test(before);
  if (character === '\ufe0f')
    return EMOJI.test(before) || (/[0-9#*]$/.test(before) && after === '\u20e3');
  return /[\u{e0020}-\u{e007f}]/u.test(character) && REGION_FLAG.test(before);
}
