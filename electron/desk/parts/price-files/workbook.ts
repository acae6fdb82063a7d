import { once } from 'node:events';
import { createRequire } from 'node:module';
import { setImmediate as otherCalls } from 'node:timers/promises';
import { Worker } from 'node:worker_threads';
import { z } from 'zod';
import type { Cell } from '../../../../shared/work/parts/price-file/line.ts';

const require = createRequire(import.meta.url);

/** A sheet as the library gives it: {@link cellOf} makes cells of it, some at a time. */
export interface Sheet {
  name: string;
  rows: unknown[][];
}

/** An XLSX workbook is a ZIP archive. */
export const isWorkbook = (bytes: Buffer): boolean =>
  bytes.subarray(0, 4).equals(Buffer.from('PK\x03\x04', 'latin1'));

/**
 * What the thread does: the library unpacks a workbook in one go, seconds for a large one, in which nobody
 * else would be served. The rows come over in pieces, each when it is asked for. It is text, and not a file
 * of its own, so that the bundle for the window needs no second entry.
 */
const THREAD = `
const { parentPort, workerData } = require('node:worker_threads');
const { default: readWorkbook } = require(workerData.library);
const AT_A_TIME = 2000;
function* pieces(sheets) {
  for (const { sheet, data } of sheets) {
    yield { sheet };
    for (let at = 0; at < data.length; at += AT_A_TIME) yield { rows: data.slice(at, at + AT_A_TIME) };
  }
}
const read = readWorkbook(workerData.bytes).then(pieces, (error) => [{ failed: error.name }].values());
parentPort.on('message', async () => {
  const { value, done } = (await read).next();
  parentPort.postMessage(done ? { ended: true } : value);
});
`;

const Piece = z.union([
  z.object({ rows: z.array(z.array(z.unknown())) }),
  z.object({ sheet: z.string() }),
  z.object({ failed: z.string() }),
  z.object({ ended: z.literal(true) }),
]);

/** An archive of a few megabytes can hold gigabytes of nothing: the thread is given up before it fills the memory. */
const MOST_MEMORY_MB = 1500;

/** The sheets of a workbook that have any rows; null for an archive that holds no workbook. */
export async function sheetsOf(bytes: Buffer): Promise<Sheet[] | null> {
  const library = require.resolve('read-excel-file/universal');
  const thread = new Worker(THREAD, {
    eval: true,
    workerData: { library, bytes: Uint8Array.from(bytes).buffer },
    resourceLimits: { maxOldGenerationSizeMb: MOST_MEMORY_MB },
  });
  try {
    return await collect(thread);
  } catch (error) {
    if (isOutOfMemory(error)) return null;
    throw error;
  } finally {
    await thread.terminate();
  }
}

async function collect(thread: Worker): Promise<Sheet[] | null> {
  const sheets: Sheet[] = [];
  for (;;) {
    thread.postMessage('next');
    const [message] = await once(thread, 'message');
    const piece = Piece.parse(message);
    if ('failed' in piece) return null;
    if ('ended' in piece) return sheets.filter(({ rows }) => rows.length > 0);
    if ('sheet' in piece) sheets.push({ name: piece.sheet, rows: [] });
    else sheets.at(-1)?.rows.push(...piece.rows);
    await otherCalls();
  }
}

const isOutOfMemory = (error: unknown): boolean =>
  error instanceof Error && 'code' in error && error.code === 'ERR_WORKER_OUT_OF_MEMORY';

export function cellOf(value: unknown): Cell {
  if (typeof value === 'string' || typeof value === 'number' || value instanceof Date) return value;
  return typeof value === 'boolean' ? String(value) : '';
}
