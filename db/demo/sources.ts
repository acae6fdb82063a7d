import type { SourceKind } from '../../shared/work/vocabulary.ts';

/** A page of a source that is kept beside it. */
interface DemoSourceFile {
  fileName: string;
  /** The lines that stand on the page. */
  page: readonly string[];
}

export interface DemoSource {
  kind: SourceKind;
  title: string;
  edition?: string;
  date?: string;
  file?: DemoSourceFile;
}

/** Invented sources of the spec book, of all the kinds that a shop really has. */
export const DEMO_SOURCES = {
  'ostrel-manual': {
    kind: 'makers-manual',
    title: 'Ostrel OH-172 workshop manual',
    edition: '3rd edition',
    date: '2021-04-01',
  },
  'ostrel-bulletin': {
    kind: 'bulletin',
    title: 'Ostrel bulletin 11, ignition air gap',
    edition: 'issue 2',
    date: '2022-09-12',
  },
  'brockvane-manual': {
    kind: 'makers-manual',
    title: 'Brockvane V-190 repair manual',
    edition: 'revision D',
    date: '2016-02-01',
  },
  'brockvane-sheet': {
    kind: 'suppliers-sheet',
    title: 'Prairie Line Engine Supply, piston and ring sheet',
    edition: '14th printing',
    date: '2023-01-20',
  },
  'varnock-manual': {
    kind: 'makers-manual',
    title: 'Varnock D-680 service manual',
    edition: '2nd edition',
    date: '2014-10-01',
  },
  'varnock-bulletin': {
    kind: 'bulletin',
    title: 'Varnock bulletin 680-05, crankpin and rods',
    edition: 'issue 1',
    date: '2017-06-30',
    file: {
      fileName: 'varnock-680-05.pdf',
      page: [
        'VARNOCK ENGINES (invented)    Bulletin 680-05, issue 1',
        '',
        'Crankpin and connecting rods, D-680',
        '1  Crankpin, new: 33.950 to 33.966 mm. Below 33.900 mm replace the shaft.',
        '2  Big end, new: 34.000 to 34.016 mm. Above 34.060 mm replace the rod.',
        '',
        'Both rods run on one pin: measure it at both.',
      ],
    },
  },
  'varnock-sheet-g': {
    kind: 'makers-manual',
    title: 'Varnock D-680 G-LR supplement',
    edition: '1st edition',
    date: '2016-03-01',
  },
  'calder-card': {
    kind: 'suppliers-sheet',
    title: 'Calder & Finch Engine Parts, fastener card',
    edition: '9th printing',
    date: '2020-02-15',
  },
  'kestwick-manual': {
    kind: 'makers-manual',
    title: 'Kestwick K-416 shop manual',
    edition: '5th edition',
    date: '2018-03-15',
  },
  'kestwick-measured': {
    kind: 'measured-on-a-good-engine',
    title: 'K-416-80655, 40 hours old, measured on our bench',
    edition: 'sheet 2',
    date: '2021-01-08',
  },
  'pellaby-manual': {
    kind: 'makers-manual',
    title: 'Pellaby P-62 service instructions',
    edition: '1st edition',
    date: '2010-05-01',
  },
  handbook: {
    kind: 'handbook-or-standard',
    title: 'Bench handbook for air-cooled engines',
    edition: '7th edition',
    date: '2019-11-01',
  },
  practice: { kind: 'common-practice', title: 'Common practice of the trade' },
  'heard-kart': { kind: 'heard-or-found', title: 'Told by a kart builder at the track' },
} as const satisfies Record<string, DemoSource>;

export type SourceKey = keyof typeof DEMO_SOURCES;
