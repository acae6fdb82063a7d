import { execFileSync } from 'node:child_process';
import { beforeAll, describe, expect, it } from 'vitest';
import type { ClaimTicket } from '../../../electron/paper/content.ts';
import { drawPaper } from '../../../electron/paper/index.ts';
import { faultsOf, type ReadPaper, readPaper } from './reading-back.ts';
import { claimTicket, tag } from './samples.ts';

const draw = (content: ClaimTicket): Uint8Array => drawPaper(content, 'f');
const says = (complaint: string): ClaimTicket => ({ ...claimTicket, complaint });

/** Whatever reads a paper sets its own spaces, and marks of direction where the direction changes. */
const squeezed = (text: string): string =>
  text.normalize('NFC').replaceAll(/[\s\u200f\u202a-\u202e]/g, '');

describe('font files', () => {
  it('are read when their script occurs, and not before', () => {
    const at = (path: string) => JSON.stringify(new URL(path, import.meta.url).href);
    const program = `
      import fs from 'node:fs';
      import { syncBuiltinESMExports } from 'node:module';
      let fonts = [];
      const { readFileSync } = fs;
      fs.readFileSync = (path, ...rest) => {
        fonts.push(String(path).match(/Noto\\w+(?=_\\d+Regular.ttf)/)?.[0]);
        return readFileSync(path, ...rest);
      };
      syncBuiltinESMExports();
      const { drawPaper } = await import(${at('../../../electron/paper/index.ts')});
      const { claimTicket } = await import(${at('./samples.ts')});
      const read = [claimTicket.complaint, '김민서 ليلى', 'Ελένη 김민서 ليلى'].map((complaint) => {
        fonts = [];
        drawPaper({ ...claimTicket, complaint }, 'f');
        return fonts.filter((name) => name !== undefined);
      });
      process.stdout.write(JSON.stringify(read));`;
    const printed = execFileSync(process.execPath, ['--input-type=module', '-e', program]);
    expect(JSON.parse(printed.toString())).toEqual([
      ['NotoSans'],
      ['NotoSansKR', 'NotoSansArabic'],
      [],
    ]);
  });
});

const NAMES = [
  'Łucja Żółkiewska',
  'Sigrid Ødegård',
  'Ελένη Παπαδοπούλου',
  'Олена Київ',
  'Þórdís Nguyễn Thị Hương',
  'İpek Işık',
  'difficult office waffle',
  '山田太郎',
  '张伟 李娜',
  '김민서',
  'גִּיל יעל כהן (בן־דוד)',
  'ليلى حداد مُحَمَّد لا',
  'สมชาย ใจดี น้ำ',
  'ສົມສັກ ພູວົງ',
  'សុខ ស្រី កើត',
  'အောင်ဆန်း စုကြည်',
  'संगीता श्रीवास्तव हिन्दी',
  'রহিম কোলকাতা',
  'ਗੁਰਪ੍ਰੀਤ ਸਿੰਘ',
  'શ્રી પટેલ',
  'அருண் ஸ்ரீ',
  'శ్రీనివాస్ కృష్ణ',
  'ಕೃಷ್ಣ ಶ್ರೀನಿವಾಸ್',
  'ശ്രീകൃഷ്ണൻ',
  'ශ්‍රී ප්‍රේමදාස',
  'გიორგი',
  'Արամ Խաչատրյան',
  'ሰላም አበበ',
  '🛠️ 👍🏽 👨‍👩‍👧 1️⃣ 🇩🇪',
];

describe('names', () => {
  const everyone = { ...claimTicket, complaint: NAMES.join('\n') };
  let bytes: Uint8Array;
  let paper: ReadPaper;
  let copied = '';
  beforeAll(async () => {
    bytes = draw(everyone);
    paper = await readPaper(bytes);
    copied = execFileSync('pdftotext', ['-', '-'], { input: bytes }).toString();
  });

  it.each(NAMES)('%s comes out as it went in, by either reader', (name) => {
    expect(squeezed(paper.text)).toContain(squeezed(name));
    expect(squeezed(copied)).toContain(squeezed(name));
  });

  it('are drawn whole, the same each time, in a file without faults', () => {
    expect(paper.text).not.toContain('\ufffd');
    expect(Buffer.compare(draw(everyone), bytes)).toBe(0);
    expect(faultsOf(bytes)).toBe('');
  });

  it('are cut off to be seen, and stay within the tag, in every script', async () => {
    for (const name of ['김민서 ', 'יעל כהן ', 'ليلى حداد ', 'สมชายใจดี', 'অরুণ মুখোপাধ্যায় ', '🛠️']) {
      const long = { ...tag, customer: { ...tag.customer, name: name.repeat(30) } };
      const { placed, pages } = await readPaper(drawPaper(long, 'f'));
      expect(
        placed.some(({ text }) => text.includes('…')),
        name,
      ).toBe(true);
      for (const { text, x, width } of placed) {
        expect(x, text).toBeGreaterThan(0);
        expect(x + width, text).toBeLessThan(pages[0]?.width ?? 0);
      }
    }
  });
});

describe('what cannot be drawn', () => {
  it('is seen to be missing', async () => {
    const { text } = await readPaper(draw(says('𐎀𐎁 ꦗ Lindholt a\u0007b\tc end')));
    expect(squeezed(text)).toContain('\ufffd\ufffd\ufffdLindholta\ufffdbcend');
  });

  it('is refused where it is half of a pair, of which no record can be kept', () => {
    expect(() => draw(says('a \ud800 end'))).toThrow(TypeError);
  });

  it('does not turn round or hide what stands beside it', async () => {
    const { text } = await readPaper(
      draw(says('\u202egnp.exe\u202c in\u200dvo\u2060ice \u2067x\u2069')),
    );
    expect(text).toContain('gnp.exe invoice x');
  });
});
