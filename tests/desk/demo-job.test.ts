import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { issuedPaper } from '../../db/schema/index.ts';
import { openStore, type Store } from '../../db/store.ts';
import { runDemoJob } from '../../electron/command/demo-job.ts';
import { type DeskClient, deskClient } from '../../electron/command/demo-shop/client.ts';
import { undisturbed } from '../../electron/desk/index.ts';
import { drawPaper } from '../../electron/paper/index.ts';
import type { BenchSheet, Reading } from '../../shared/contract/bench/index.ts';
import type { JobDossier } from '../../shared/contract/counter/index.ts';
import { unitLabel } from '../../shared/trade/index.ts';
import { handoverCautions, LOCAL_LAW } from '../../shared/work/cautions.ts';
import { CORE_FEATURES } from '../../shared/work/features.ts';
import { PHASE_LABELS } from '../../shared/work/vocabulary.ts';
import { faultsOf, readBarcode } from '../unit/paper/reading-back.ts';

const FILES = [
  'claim-ticket.pdf',
  'estimate.pdf',
  'invoice.pdf',
  'receipt-2.pdf',
  'receipt.pdf',
  'tag.pdf',
  'work-order.pdf',
];

/** How a verdict is written on paper. */
const WORDS = {
  within: 'within limits',
  outside: 'outside limits',
  'too-close': 'too close to call',
  'no-band': 'no limits',
} satisfies Record<Reading['verdict'], string>;

let folder: string;
let out: string;
let store: Store;
let desk: DeskClient;
let job: JobDossier;
let sheet: BenchSheet;
let printed: string;
let summary: string;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'tappet-demo-job-'));
  // Not there yet: the job makes it.
  out = join(folder, 'papers', 'here');
  store = openStore(join(folder, 'data'), { careless: true });
  const context = {
    store,
    now: () => new Date('2026-11-25T16:00:00Z'),
    drawPaper,
    program: { version: '0' },
    alone: undisturbed,
  };
  const print = vi.spyOn(process.stdout, 'write').mockReturnValue(true);
  try {
    await runDemoJob(context, out);
    summary = print.mock.calls.map(([text]) => String(text)).join('');
  } finally {
    print.mockRestore();
  }
  desk = deskClient(context);
  job = await desk.counter.job({ code: 'J000001' });
  sheet = await desk.bench.sheet({ jobId: job.id });
  printed = execFileSync('pdftotext', ['-layout', join(out, 'work-order.pdf'), '-'], {
    encoding: 'utf8',
  });
}, 120_000);

afterAll(() => {
  store.close();
  rmSync(folder, { recursive: true, force: true });
});

const bytesOf = (file: string) => new Uint8Array(readFileSync(join(out, file)));

/** Words as they follow each other on the page, however its lines are broken. */
const running = (text: string) => text.replaceAll(/\s+/g, ' ');

const phaseOf = (line: string) =>
  Object.values(PHASE_LABELS).find((label) => line.startsWith(`${label} `));

/**
 * The lines below the band of a feature, on the next page too. With a phase: those that stand below its
 * line, up to that of the next phase.
 */
function section(feature: string, phase?: string): string[] {
  const labels = sheet.features.map(({ label }) => label);
  const lines = printed.split('\n').map((line) => line.trim());
  const record = lines.slice(
    lines.findIndex((line) => line.startsWith('Recorded clearances')),
    lines.indexOf('Hold points'),
  );
  let inFeature = '';
  let inPhase: string | undefined;
  return record.filter((line) => {
    const begins = labels.find((label) =>
      new RegExp(`^${label}(, continued)?(\\s{2,}|$)`).test(line),
    );
    if (begins !== undefined && begins !== inFeature) inPhase = undefined;
    inFeature = begins ?? inFeature;
    inPhase = phaseOf(line) ?? inPhase;
    return inFeature === feature && (phase === undefined || inPhase === phase);
  });
}

const readings = () =>
  sheet.features.flatMap(({ places, ...feature }) =>
    places.flatMap((place) => place.readings.map((reading) => ({ feature, reading }))),
  );

test('leaves exactly its papers, and says what it wrote', () => {
  expect(readdirSync(out).sort()).toEqual(FILES);
  for (const file of FILES) expect(summary).toContain(file);
  expect(summary).toContain(job.papers.find(({ kind }) => kind === 'work-order')?.fingerprint);
  expect(summary).toContain('0.03 mm was questioned (0.3 mm?)');
});

test('ends handed over, paid, with an unbroken journal', async () => {
  expect(job.state).toBe('handed-over');
  expect(await desk.till.account({ jobId: job.id })).toMatchObject({
    due: 0,
    approvals: [{ how: 'text' }],
    payments: [{ kind: 'deposit' }, { kind: 'payment' }],
  });
  expect(await desk.office.verifyJournal({})).toMatchObject({ intact: true, firstBroken: null });
});

test('everything that its entry in the spec book asks for has its final readings, all of them sound', () => {
  const asked = sheet.features.filter((each) => each.asked).map((each) => each.feature);
  expect(asked).toEqual(expect.arrayContaining([...CORE_FEATURES]));
  for (const feature of asked) {
    const { places } = sheet.features.find((each) => each.feature === feature) ?? { places: [] };
    expect(places, feature).not.toHaveLength(0);
    for (const place of places) {
      const finals = place.readings.filter(({ phase }) => phase === 'final');
      expect(finals.length, `${feature} ${place.key}`).toBeGreaterThan(0);
      expect(finals.at(-1)?.verdict, `${feature} ${place.key}`).toBe('within');
    }
  }
  const final = sheet.derived.filter(({ phase }) => phase === 'final');
  expect(final.filter(({ specification }) => specification !== null)).toHaveLength(6);
  // Without a specification: wear, the crankpin's out-of-round, the displacement.
  expect(final).toHaveLength(9);
});

test('what came in worn was measured too', () => {
  const received = readings().filter(({ reading }) => reading.phase === 'as-received');
  expect(received.filter(({ reading }) => reading.verdict === 'outside').length).toBeGreaterThan(5);
});

test('the slip of ten was asked about and not written', () => {
  const gaps = readings()
    .map(({ reading }) => reading)
    .filter(({ feature, phase }) => feature === 'coil-air-gap' && phase === 'final');
  expect(gaps.map(({ text }) => text)).toEqual(['0.3', '0.3']);
});

describe('the work order', () => {
  test('takes no more than six pages', () => {
    expect(printed).toMatch(/Page 1 of [1-6]\n/);
  });

  test('has every reading with its unit and its verdict on one row', () => {
    const wanted = new Map<string, number>();
    for (const { feature, reading } of readings()) {
      const key = JSON.stringify([
        feature.label,
        PHASE_LABELS[reading.phase],
        `${reading.text} ${unitLabel(reading.unit)}`,
        WORDS[reading.verdict],
      ]);
      wanted.set(key, (wanted.get(key) ?? 0) + 1);
    }
    expect(wanted.size).toBeGreaterThan(30);
    for (const [key, count] of wanted) {
      const [feature = '', phase = '', value = '', verdict = ''] = JSON.parse(key) as string[];
      const row = new RegExp(`(^|\\s)${value.replaceAll('.', '\\.')}\\s.*${verdict}`);
      const rows = section(feature, phase).filter((line) => row.test(line));
      expect(rows.length, key).toBe(count);
    }
  });

  test('names the source of every specification, with edition and page, and its standing', () => {
    for (const { label, specification, places } of sheet.features) {
      if (places.every((place) => place.readings.length === 0)) continue;
      if (specification === null) throw new Error(`${label} has no specification.`);
      const { source, page, standing } = specification;
      const [band = '', below = ''] = section(label);
      expect(band).toContain(label);
      expect(below).toContain(`${source.title}, ${source.edition}, page ${page}`);
      expect(below.toLowerCase()).toContain(`${standing} specification`);
    }
  });

  test('has the names of both who signed, the hold points with who, the cautions, the fingerprint', () => {
    const text = running(printed);
    const signed = text.slice(text.indexOf('Signed at handover'));
    expect(signed).toContain('Łucja Żółkiewska');
    expect(signed).toContain('Ignacio Peña');
    for (const { label, state, by } of sheet.holdPoints) {
      expect(state, label).toBe('passed');
      // The label may be broken over two lines, with the row's other cells between them.
      expect(text).toContain(label.split(' ').slice(0, 4).join(' '));
      expect(by).toBe('Ignacio Peña');
    }
    for (const caution of [...handoverCautions('tiller'), LOCAL_LAW])
      expect(text).toContain(caution);
    const fingerprint = job.papers.find(({ kind }) => kind === 'work-order')?.fingerprint;
    expect(text).toContain(`Fingerprint ${fingerprint}`);
  });
});

test('the tag’s barcode, rendered to pixels, reads back as the code of the job', async () => {
  expect(await readBarcode(bytesOf('tag.pdf'), 200)).toEqual([
    { format: 'Code128', text: job.code },
  ]);
});

test.each(FILES)('%s: a checker of PDF files finds nothing', (file) => {
  expect(faultsOf(bytesOf(file))).toBe('');
});

test('what is stored has the fingerprint that is printed, and comes out the same each time', async () => {
  const rows = store.read.select().from(issuedPaper).all();
  expect(rows).toHaveLength(FILES.length);
  for (const row of rows) {
    const sha256 = createHash('sha256').update(row.content, 'utf8').digest('hex');
    expect(sha256).toBe(row.fingerprint);
    const second = rows.find(({ kind }) => kind === row.kind) !== row;
    const file = second ? `${row.kind}-2.pdf` : `${row.kind}.pdf`;
    const text = execFileSync('pdftotext', ['-layout', join(out, file), '-'], { encoding: 'utf8' });
    expect(text).toContain(sha256);
    const once = await desk.office.paper({ id: row.id });
    const again = await desk.office.paper({ id: row.id });
    expect(again.pdf).toBe(once.pdf);
    expect(createHash('sha256').update(once.content, 'utf8').digest('hex')).toBe(once.fingerprint);
    expect(Buffer.from(once.pdf, 'base64').equals(readFileSync(join(out, file)))).toBe(true);
    expect(once.pdfSha256).toBe(createHash('sha256').update(bytesOf(file)).digest('hex'));
  }
});

test('its engine model has a specification for everything that every rebuild measures', async () => {
  const [model] = await desk.specbook.models({ text: '' });
  if (model === undefined) throw new Error('The spec book is empty.');
  const { specifications } = await desk.specbook.model({ id: model.id });
  expect(specifications.map(({ feature }) => feature)).toEqual(
    expect.arrayContaining([
      ...CORE_FEATURES,
      'bore-taper',
      'bore-out-of-round',
      'piston-clearance',
      'rod-clearance',
    ]),
  );
});
