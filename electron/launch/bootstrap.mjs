// Every npm script begins here: `node electron/launch/bootstrap.mjs SCRIPT [ARGUMENTS]`.
// It installs what is missing, then goes on under the Node that the project pins.
import { spawn } from 'node:child_process';
import { realpathSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { ensureInstalled, pinnedNode } from './install.mjs';

const root = resolve(dirname(fileURLToPath(import.meta.url)), '..', '..');

function runsOnPinnedNode() {
  try {
    return realpathSync(process.execPath) === realpathSync(pinnedNode(root));
  } catch {
    return false;
  }
}

function runUnderPinnedNode(script, rest) {
  const child = spawn(pinnedNode(root), [script, ...rest], { stdio: 'inherit' });
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) {
    // A terminal sends Ctrl+C to both; passing it on covers a signal sent to this process alone.
    process.on(signal, () => child.kill(signal));
  }
  // npm's shell passes no signal on; when it is gone, npm has been stopped.
  const parent = process.ppid;
  const watch = setInterval(() => {
    if (process.env.npm_lifecycle_event && process.ppid !== parent) child.kill('SIGTERM');
  }, 500);
  child.on('error', (error) => {
    process.stderr.write(`Tappet's own Node could not be started: ${error.message}\n`);
    process.exitCode = 1;
  });
  child.on('exit', (code, signal) => {
    clearInterval(watch);
    process.exitCode = code ?? (signal === 'SIGINT' ? 130 : 1);
  });
}

const [script, ...rest] = process.argv.slice(2);
if (!script) {
  process.stderr.write('Which script? Use the commands of package.json, for example npm start.\n');
  process.exitCode = 2;
} else if (!ensureInstalled(root)) {
  process.stderr.write(
    'Installing did not work. Check the network and the free space, then give the command again.\n',
  );
  process.exitCode = 1;
} else {
  const target = resolve(root, script);
  process.chdir(process.env.INIT_CWD ?? process.cwd());
  if (runsOnPinnedNode()) {
    process.argv.splice(1, 2, target);
    await import(pathToFileURL(target).href);
  } else {
    runUnderPinnedNode(join(root, script), rest);
  }
}
