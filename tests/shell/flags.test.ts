import { describe, expect, test } from 'vitest';
import { parseDeskArguments } from '../../electron/command/desk-arguments.ts';
import { chosenDataFolder, defaultDataFolder } from '../../electron/launch/data-folder.ts';
import { parseStartFlags, parseWindowFlags } from '../../electron/launch/flags.ts';
import { PlainRefusal } from '../../electron/launch/sentence.ts';

function refusalOf(act: () => unknown): PlainRefusal {
  try {
    act();
  } catch (error) {
    if (error instanceof PlainRefusal) return error;
    throw error;
  }
  throw new Error('Nothing was refused.');
}

describe('flags of npm start', () => {
  test('nothing asked for', () => {
    expect(parseStartFlags([], '/here')).toEqual({
      data: undefined,
      demo: false,
      serve: false,
      port: undefined,
      help: false,
    });
  });

  test('everything asked for; a folder is meant from where the person stands', () => {
    expect(
      parseStartFlags(['--data', 'shop', '--demo', '--serve', '--port', '4100'], '/here'),
    ).toEqual({ data: '/here/shop', demo: true, serve: true, port: 4100, help: false });
  });

  test.each([
    [['--colour'], 'There is no flag --colour.'],
    [['shop'], "'shop' is not a flag."],
    [['--data'], '--data is not used like this.'],
    [['--data', ' '], '--data needs the name of a folder.'],
    [['--port', '65536'], "--port needs a whole number from 0 to 65535, not '65536'."],
    [['--port', '1e3'], "--port needs a whole number from 0 to 65535, not '1e3'."],
    [['--port=-1'], "--port needs a whole number from 0 to 65535, not '-1'."],
  ])('%j is refused in a sentence, with exit code 2', (args, sentence) => {
    const refusal = refusalOf(() => parseStartFlags(args, '/here'));
    expect(refusal.exitCode).toBe(2);
    expect(refusal.message.split('\n')[0]).toBe(sentence);
  });
});

describe('flags of the window', () => {
  test('the switches of Electron and of the system are passed over', () => {
    const args = ['--inspect=0', '.', '--no-sandbox', '--data', '/shop', '-psn_0_1'];
    expect(parseWindowFlags(args, '/here')).toEqual({ data: '/shop', demo: false });
    expect(parseWindowFlags(['--data=shop', '--demo'], '/here')).toEqual({
      data: '/here/shop',
      demo: true,
    });
  });
});

describe('data folder', () => {
  const home = '/home/ina';

  test("the system's own place for such data", () => {
    const linux = { platform: 'linux', home } as const;
    expect(defaultDataFolder({ ...linux, environment: {} })).toBe('/home/ina/.local/share/tappet');
    expect(defaultDataFolder({ ...linux, environment: { XDG_DATA_HOME: '/data' } })).toBe(
      '/data/tappet',
    );
    // XDG base directory specification 0.8: relative paths are invalid and to be ignored.
    expect(defaultDataFolder({ ...linux, environment: { XDG_DATA_HOME: 'data' } })).toBe(
      '/home/ina/.local/share/tappet',
    );
    expect(defaultDataFolder({ platform: 'darwin', home, environment: {} })).toBe(
      '/home/ina/Library/Application Support/Tappet',
    );
    const roaming = { APPDATA: 'C:\\Users\\ina\\AppData\\Roaming' };
    expect(
      defaultDataFolder({ platform: 'win32', home: 'C:\\Users\\ina', environment: roaming }),
    ).toBe('C:\\Users\\ina\\AppData\\Roaming\\Tappet');
  });

  test('the invented shop has a folder of its own, unless one is named', () => {
    expect(chosenDataFolder({ data: undefined, demo: false }, '/d/tappet')).toBe('/d/tappet');
    expect(chosenDataFolder({ data: undefined, demo: true }, '/d/tappet')).toBe('/d/tappet-demo');
    expect(chosenDataFolder({ data: '/x', demo: true }, '/d/tappet')).toBe('/x');
  });
});

describe('arguments of the desk command', () => {
  test('LIST, and a call with and without input', () => {
    expect(parseDeskArguments(['LIST'], '/here')).toEqual({ kind: 'list' });
    expect(parseDeskArguments(['--data', 'd', 'office.about'], '/here')).toEqual({
      kind: 'call',
      folder: '/here/d',
      procedure: 'office.about',
      input: {},
    });
    expect(parseDeskArguments(['a.b', '{"c":[1]}', '--data', '/d'], '/here')).toEqual({
      kind: 'call',
      folder: '/d',
      procedure: 'a.b',
      input: { c: [1] },
    });
  });

  test.each([
    [[]],
    [['a.b', '{']],
    [['a.b', '{}', '{}']],
    [['--port', '1', 'a.b']],
    [['--data', '', 'a.b']],
    [['--data', ' ', 'a.b', '{}']],
    [['a.b', '{}']],
  ])('%j is refused', (args) => {
    expect(refusalOf(() => parseDeskArguments(args, '/here')).code).toBe('BAD_COMMAND');
  });
});
