import { resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { PlainRefusal } from '../launch/sentence.ts';

export type DeskArguments =
  | { kind: 'list' }
  | { kind: 'call'; folder: string; procedure: string; input: unknown };

const usage =
  'Give LIST, or a procedure and its input as JSON: npm run -s desk -- --data DIR counter.findCustomers \'{"text":"Ward"}\'';

function misused(sentence: string): PlainRefusal {
  return new PlainRefusal('BAD_COMMAND', `${sentence} ${usage}`);
}

/**
 * Reads `LIST`, or `--data DIR PROCEDURE ['JSON']`. An input that is left out is `{}`. The folder is never
 * guessed: a call that was meant for a trial would land in the shop's own books.
 * @throws PlainRefusal for anything else
 */
export function parseDeskArguments(args: readonly string[], workingFolder: string): DeskArguments {
  const { values, positionals } = read(args);
  const [procedure, json, ...more] = positionals;
  if (procedure === undefined) throw misused('No procedure was named.');
  if (procedure === 'LIST' && json === undefined) return { kind: 'list' };
  if (more.length > 0) throw misused('There is more than one input; put the JSON in quotes.');
  if (!values.data?.trim()) throw misused('Say with --data DIR which shop is meant.');
  return {
    kind: 'call',
    folder: resolve(workingFolder, values.data),
    procedure,
    input: json === undefined ? {} : parseInput(json),
  };
}

function read(args: readonly string[]) {
  try {
    return parseArgs({
      args: [...args],
      options: { data: { type: 'string' } },
      allowPositionals: true,
    });
  } catch {
    throw misused('The only flag here is --data DIR.');
  }
}

function parseInput(json: string): unknown {
  try {
    return JSON.parse(json);
  } catch (cause) {
    const detail = cause instanceof Error ? ` (${cause.message})` : '';
    throw misused(`The input is not JSON${detail}.`);
  }
}
