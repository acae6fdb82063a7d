/**
 * Brings what a keyboard, an input method or a web page makes of a reading to plain characters:
 * full-width and Arabic digits, hard spaces, marks of the writing direction, typographic quotes and
 * minus signs, squared unit characters (㎜), one-character fractions (⅜). The characters are listed
 * one by one because Unicode's own compatibility forms would turn 1½ into 11/2 and 5² into 52.
 */
export function plainCharacters(text: string): string {
  return text
    .replace(/[\u00BC-\u00BE\u2150-\u215E]/g, (sign) => ` ${sign.normalize('NFKC')}`)
    .replace(/[\u3300-\u33FF]/g, (sign) => sign.normalize('NFKC'))
    .replace(/[\uFF01-\uFF5E]/g, (sign) => String.fromCharCode(sign.charCodeAt(0) - 0xfee0))
    .replace(/[\u0660-\u0669]/g, (digit) => String(digit.charCodeAt(0) - 0x660))
    .replace(/[\u06F0-\u06F9]/g, (digit) => String(digit.charCodeAt(0) - 0x6f0))
    .replace(/\u066B/g, '.')
    .replace(/[\u061C\u200B-\u200F\u202A-\u202E\u2060\u2066-\u2069\uFEFF]/g, '')
    .replace(/[\u2010-\u2015\u2212\u30FC\uFE63]/g, '-')
    .replace(/[\u2044\u2215]/g, '/')
    .replace(/[\u2018\u2019\u2032\u00B4]/g, "'")
    .replace(/[\u201C-\u201E\u2033\u3003]/g, '"')
    .replace(/[\u22C5\u2219\u2022\u2027\u30FB\uFF65]/g, '·')
    .replace(/[\u00BA\u02DA]/g, '°')
    .replace(/\u2103/g, '°C')
    .replace(/\u2109/g, '°F')
    .replace(/\u2126/g, 'Ω')
    .replace(/\u00B5/g, 'μ')
    .replace(/μm/g, 'um')
    .replace(/(?<=[a-z])\u00B3/gi, '3')
    .replace(/(?<=[a-z])\u00B2/gi, '2')
    .replace(/\u3002/g, '.')
    .replace(/\s+/g, ' ')
    .trim();
}
