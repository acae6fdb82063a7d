import { homedir } from 'node:os';
import { posix, win32 } from 'node:path';

type Surroundings = {
  platform: NodeJS.Platform;
  environment: Readonly<Record<string, string | undefined>>;
  home: string;
};

/** Where the shop's data is kept when nobody says otherwise: the system's place for such data. */
export function defaultDataFolder(
  { platform, environment, home }: Surroundings = {
    platform: process.platform,
    environment: process.env,
    home: homedir(),
  },
): string {
  if (platform === 'win32') {
    const roaming = environment.APPDATA || win32.join(home, 'AppData', 'Roaming');
    return win32.join(roaming, 'Tappet');
  }
  if (platform === 'darwin') {
    return posix.join(home, 'Library', 'Application Support', 'Tappet');
  }
  return posix.join(xdgDataHome(environment, home), 'tappet');
}

/** The XDG base directory specification says that a relative path is to be ignored. */
function xdgDataHome(environment: Surroundings['environment'], home: string): string {
  const given = environment.XDG_DATA_HOME;
  return given && posix.isAbsolute(given) ? given : posix.join(home, '.local', 'share');
}

/** The folder to open: the one asked for, else the default one; the demo shop has its own. */
export function chosenDataFolder(
  flags: { data: string | undefined; demo: boolean },
  fallback = defaultDataFolder(),
): string {
  if (flags.data !== undefined) return flags.data;
  return flags.demo ? `${fallback}-demo` : fallback;
}
