import { resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { PlainRefusal } from './sentence.ts';

/** What `npm start -- …` was asked for. */
export type StartFlags = {
  /** Absolute path, or undefined for the default data folder. */
  data: string | undefined;
  demo: boolean;
  serve: boolean;
  /** 0 lets the system choose a free one. */
  port: number | undefined;
  help: boolean;
};

export const startHelp = `npm start -- [--data DIR] [--demo] [--serve] [--port N]

  --data DIR  keep the shop's data in DIR
  --demo      open the invented shop, in a folder of its own
  --serve     use the browser instead of a window
  --port N    serve at this port (1 to 65535; 0 or nothing: any free port)
`;

/**
 * Reads the flags of `npm start`.
 * @throws PlainRefusal with exit code 2 for a flag that is not known or makes no sense.
 */
export function parseStartFlags(args: readonly string[], workingFolder: string): StartFlags {
  const { values } = readFlags(args);
  return {
    data: values.data === undefined ? undefined : resolve(workingFolder, wanted(values.data)),
    demo: values.demo ?? false,
    serve: values.serve ?? false,
    port: values.port === undefined ? undefined : parsePort(values.port),
    help: values.help ?? false,
  };
}

function readFlags(args: readonly string[]) {
  try {
    return parseArgs({
      args: [...args],
      options: {
        data: { type: 'string' },
        demo: { type: 'boolean' },
        serve: { type: 'boolean' },
        port: { type: 'string' },
        help: { type: 'boolean', short: 'h' },
      },
      allowPositionals: false,
    });
  } catch (cause) {
    throw misused(whatIsWrong(cause));
  }
}

/** Node's own words for it are meant for programmers. */
function whatIsWrong(cause: unknown): string {
  const { code, message } = cause as NodeJS.ErrnoException;
  const named = /'(?:-\w, )?([^' ]+)/.exec(message)?.[1] ?? '';
  if (code === 'ERR_PARSE_ARGS_UNKNOWN_OPTION') return `There is no flag ${named}.`;
  if (code === 'ERR_PARSE_ARGS_UNEXPECTED_POSITIONAL') return `'${named}' is not a flag.`;
  return `${named} is not used like this.`;
}

function wanted(folder: string): string {
  if (folder.trim() === '') throw misused('--data needs the name of a folder.');
  return folder;
}

function parsePort(text: string): number {
  const port = Number(text);
  if (!/^\d+$/.test(text) || port > 65535) {
    throw misused(`--port needs a whole number from 0 to 65535, not '${text}'.`);
  }
  return port;
}

function misused(sentence: string): PlainRefusal {
  return new PlainRefusal('BAD_FLAG', `${sentence}\n\n${startHelp}`, 2);
}

/**
 * The two flags that the window itself obeys. Electron and the system put switches of their own
 * on the same command line, so what is unknown is passed over here.
 */
export function parseWindowFlags(
  args: readonly string[],
  workingFolder: string,
): Pick<StartFlags, 'data' | 'demo'> {
  let data: string | undefined;
  for (const [index, arg] of args.entries()) {
    const value = arg === '--data' ? args[index + 1] : arg.match(/^--data=(.+)$/)?.[1];
    if (value) data = resolve(workingFolder, value);
  }
  return { data, demo: args.includes('--demo') };
}
