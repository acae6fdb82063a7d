import { buildIfChanged } from './build.ts';
import { chosenDataFolder } from './data-folder.ts';
import { parseStartFlags, type StartFlags, startHelp } from './flags.ts';
import { openWindow } from './open-window.ts';
import { reportAndExit } from './report.ts';

async function start(flags: StartFlags): Promise<void> {
  if (flags.help) {
    process.stdout.write(startHelp);
    return;
  }
  const folder = chosenDataFolder(flags);
  if (await buildIfChanged('renderer')) process.stderr.write('Built the screens.\n');

  // A port is only of use to the browser, so to ask for one is to ask for serving.
  const wantsBrowser = flags.serve || flags.port !== undefined;
  if (!wantsBrowser) {
    const outcome = await openWindow({ folder, demo: flags.demo });
    if (outcome.opened) {
      process.exitCode = outcome.exitCode;
      return;
    }
    process.stderr.write(`${outcome.reason} Tappet works the same in the browser:\n`);
  }
  const { serveUntilStopped } = await import('../serve/serve.ts');
  await serveUntilStopped({ folder, demo: flags.demo, port: flags.port ?? 0 });
}

try {
  await start(parseStartFlags(process.argv.slice(2), process.cwd()));
} catch (error) {
  reportAndExit(error);
}
