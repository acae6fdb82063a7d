import fc from 'fast-check';
import PDFDocument from 'pdfkit';
import { describe, expect, it } from 'vitest';
import { Paragraph } from '../../../electron/paper/fonts/direction.ts';
import { drawable } from '../../../electron/paper/fonts/drawable.ts';
import { FAMILIES, familiesFor } from '../../../electron/paper/fonts/families.ts';
import { fontForOneDocument } from '../../../electron/paper/fonts/font-files.ts';
import { breakablePieces } from '../../../electron/paper/fonts/line-break.ts';
import { runsOf } from '../../../electron/paper/fonts/runs.ts';
import { shapedFont } from '../../../electron/paper/fonts/shaped-font.ts';
import { Typesetter } from '../../../electron/paper/fonts/typesetter.ts';

/** As it is seen from left to right, stretches parted by strokes. */
const seen = (text: string): string =>
  new Paragraph(text)
    .stretches(0, text.length)
    .map((stretch) =>
      stretch.rightToLeft ? Array.from(stretch.text).reverse().join('') : stretch.text,
    )
    .join('|');

/** Unicode Standard Annex 9, Unicode Bidirectional Algorithm, rules P2 to L2; the orders from memory. */
describe('directions in a line', () => {
  it.each([
    ['our words run on around a name', 'Ask יעל כהן first', 'Ask |ןהכ לעי| first'],
    ['a number in a line from right to left', 'הרצל 12, אבג', 'גבא ,|12| לצרה'],
    ['a line of one name', 'יעל (כהן)', ')ןהכ( לעי'],
    ['an emoji within a name', 'יעל 🛠 כהן', null],
    [
      'words from left to right in a complaint',
      'המנוע Torvane לא מתניע',
      'עינתמ אל |Torvane| עונמה',
    ],
  ])('%s', (_, text, order) => {
    if (order !== null) expect(seen(text)).toBe(order);
    else expect(new Paragraph(text).stretches(0, text.length)).toHaveLength(1);
  });

  it('begins at the right only where the text does, and is mostly of such letters', () => {
    for (const text of ['יעל כהן', 'ليلى 12', 'המנוע Torvane לא מתניע'])
      expect(new Paragraph(text).rightToLeft, text).toBe(true);
    for (const text of ['Yael יעל', 'יעל · Grindal Furrowline 65', '12', ''])
      expect(new Paragraph(text).rightToLeft, text).toBe(false);
  });
});

describe('fonts', () => {
  const familiesOf = (text: string, locale = 'en-US') =>
    runsOf({ text, rightToLeft: false, at: 0 }, 'regular', familiesFor(locale)).map(
      ({ text: piece, family }) => `${piece} ${family}`,
    );

  it.each([
    ['骨', 'en-US', ['骨 japanese']],
    ['骨', 'zh-CN', ['骨 chinese']],
    ['骨', 'ko-KR', ['骨 korean']],
    ['金민', 'en-US', ['金민 korean']],
    ['金のテスト', 'zh-CN', ['金のテスト japanese']],
    ['สมชาย 12 ใจดี Smith', 'en-US', ['สมชาย 12 ใจดี thai', ' Smith base']],
    ['©', 'en-US', ['© base']],
    ['A🔧', 'en-US', ['A base', '🔧 emoji']],
  ])('%s in %s', (text, locale, expected) => {
    expect(familiesOf(text, locale)).toEqual(expected);
  });
});

describe('joiners', () => {
  it.each([
    'می\u200cخواهم',
    'ශ්\u200dරී',
    '👨\u200d👩\u200d👧',
    '🛠\ufe0f',
    '1\ufe0f\u20e3',
    'क्\u200dष',
  ])('stay in %s', (text) => expect(drawable(text)).toBe(text));

  it.each([
    'a\u200db',
    'a\u200cb',
    '1\ufe0f',
    '\u202eab\u202c',
    '\u2067ab\u2069',
    'soft\u00adhyphen',
  ])('go where nothing depends on them: %j', (text) => expect(drawable(text)).toMatch(/^[\w]+$/));
});

describe('shapes', () => {
  const glyphsOf = (text: string) =>
    shapedFont(fontForOneDocument('arabic', 'regular'), true).layout(text, ['rtla']).glyphs;

  it('of Arabic letters depend on their neighbours, and not on those across a non-joiner', () => {
    const [joined, apart, alone] = ['بب', 'ب\u200cب', 'ب'].map((text) =>
      glyphsOf(text).reduce((sum, { advanceWidth }) => sum + advanceWidth, 0),
    );
    expect(apart).toBe(2 * (alone ?? 0));
    expect(joined).toBeLessThan(apart ?? 0);
  });

  it('stand for each character once, from left to right', () => {
    const said = glyphsOf('محمد لا').map(({ codePoints }) => String.fromCodePoint(...codePoints));
    expect(said.toReversed().join('')).toBe('محمد لا');
  });

  it.each([
    ['arabic', 'rtla', 'اأبتجدرسشطعفقلمهويىةلاًُّ ١()'],
    ['devanagari', 'ltra', 'कखगतदनपमयरलवशसह\u094d\u093f\u0940\u0941\u0947\u0902\u093c\u200d १'],
    ['bengali', 'ltra', 'কখগতদনপমযরলশসহ\u09cd\u09bf\u09c0\u09c1\u09c7\u09cb\u0982\u09bc '],
    ['malayalam', 'ltra', 'കഗതദനപമയരലവശസഹ\u0d4d\u0d3f\u0d40\u0d46\u0d4a\u0d02ൻ '],
    ['khmer', 'ltra', 'កខគតនបមយរលសហ\u17d2\u17b7\u17be\u17c4\u17bb\u17c6 '],
    ['myanmar', 'ltra', 'ကခဂငတနပမယရလသဟ\u1039\u103a\u103b\u103c\u103d\u103e\u102d\u102f\u1031 '],
    ['thai', 'ltra', 'กขคงจชดตนบปมรลสหเแใไาำ\u0e34\u0e48\u0e49 '],
  ] as const)(
    'of %s say all of any text, in whatever order its signs come',
    (family, way, letters) => {
      const font = shapedFont(
        fontForOneDocument(family, 'regular'),
        FAMILIES[family].setting === 'words',
      );
      fc.assert(
        fc.property(
          fc.array(fc.constantFrom(...letters), { minLength: 1, maxLength: 8 }),
          (typed) => {
            const text = drawable(typed.join(''));
            const glyphs = font
              .layout(text, [way])
              .glyphs.map(({ codePoints }) => String.fromCodePoint(...codePoints));
            const said = (way === 'rtla' ? glyphs.reverse() : glyphs).join('');
            expect(said.replaceAll('\u200f', '')).toBe(text);
          },
        ),
        { numRuns: 40 },
      );
    },
  );

  it('are found for Burmese that the library would draw for ever', () => {
    const font = shapedFont(fontForOneDocument('myanmar', 'regular'), false);
    expect(font.layout('ရှို').glyphs).toHaveLength(4);
  });
});

describe('lines', () => {
  it.each([
    ['สมชายใจดีมาก', ['สมชาย', 'ใจดี', 'มาก']],
    ['김민서 이준호', ['김민서 ', '이준호']],
    ['ខ្ញុំស្រឡាញ់អ្នក', ['ខ្ញុំ', 'ស្រឡាញ់', 'អ្នក']],
    ['בית־ספר גדול', ['בית־', 'ספר ', 'גדול']],
    ['70.000/70.025 mm', ['70.000/70.025 ', 'mm']],
  ])('%s breaks between words', (text, pieces) => {
    expect(breakablePieces(text)).toEqual(pieces);
  });

  it('of one long word are found without laying out the rest each time', () => {
    const document = new PDFDocument({ font: '' });
    const style = { face: 'regular', size: 10, leading: 12, ink: '#000000' } as const;
    const type = new Typesetter(document, 'en-US');
    const lines = type.lines('क'.repeat(1000), style, 200);
    expect(lines.map((line) => line.text).join('')).toBe('क'.repeat(1000));
    for (const { text, width } of lines.slice(0, -1)) {
      expect(width).toBeLessThanOrEqual(200);
      expect(type.widthOf(`${text}क`, style)).toBeGreaterThan(200);
    }
  });

  it('from right to left begin at the right, and hold the words in their order', () => {
    const document = new PDFDocument({ font: '' });
    const style = { face: 'regular', size: 10, leading: 12, ink: '#000000' } as const;
    const text = 'המנוע לא מתניע אחרי החורף ומוציא עשן כחול';
    const lines = new Typesetter(document, 'en-US').lines(text, style, 90);
    expect(lines.length).toBeGreaterThan(1);
    expect(lines.map((line) => line.text).join(' ')).toBe(text);
    const ends = lines.map(({ indent, width }) => indent + width);
    for (const end of ends) expect(end).toBeCloseTo(ends[0] ?? 0, 6);
  });
});
