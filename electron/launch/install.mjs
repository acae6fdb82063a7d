// Plain JavaScript on purpose: this runs under Node 20, before anything is installed.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** Where npm leaves the Node that the program runs on. */
export function pinnedNode(root, platform = process.platform) {
  return join(root, 'node_modules', 'node', 'bin', platform === 'win32' ? 'node.exe' : 'node');
}

function lockHash(root) {
  return createHash('sha256')
    .update(readFileSync(join(root, 'package-lock.json')))
    .digest('hex');
}

function stampFile(root) {
  return join(root, 'node_modules', '.tappet-install');
}

/**
 * Whether what is installed belongs to the lock file of now.
 * Somebody may have run `npm ci` themselves; npm's own mark, newer than the lock, will do then.
 */
export function isInstalled(root, platform = process.platform) {
  if (!existsSync(pinnedNode(root, platform))) return false;
  if (existsSync(stampFile(root))) {
    return readFileSync(stampFile(root), 'utf8').trim() === lockHash(root);
  }
  const npmMark = join(root, 'node_modules', '.package-lock.json');
  return (
    existsSync(npmMark) &&
    statSync(npmMark).mtimeMs >= statSync(join(root, 'package-lock.json')).mtimeMs
  );
}

/**
 * How much npm says. It is run by whatever Node is there, before the one that the packages are made for has
 * been installed, and would warn of that for each of them. Whoever asks npm for more gets it.
 */
function loudness() {
  const asked = process.env.npm_config_loglevel ?? '';
  return ['http', 'info', 'verbose', 'silly'].includes(asked) ? asked : 'error';
}

/**
 * Runs `npm ci` if needed. Errors of npm's show as they come, on stderr: stdout belongs to the command. The
 * rest shows when it failed.
 * @returns {boolean} false when npm failed; it has said why by then.
 */
export function ensureInstalled(root) {
  if (!isInstalled(root)) {
    process.stderr.write('Installing what Tappet needs (npm ci). This takes a minute or two.\n');
    const npm = process.env.npm_execpath;
    const [command, first] = npm
      ? [process.env.npm_node_execpath ?? process.execPath, [npm]]
      : ['npm', []];
    const outcome = spawnSync(
      command,
      [...first, 'ci', '--no-audit', '--no-fund', `--loglevel=${loudness()}`],
      {
        cwd: root,
        stdio: ['ignore', 'pipe', 2],
        maxBuffer: Number.POSITIVE_INFINITY,
        shell: !npm && process.platform === 'win32',
      },
    );
    if (outcome.status !== 0 || !existsSync(pinnedNode(root))) {
      process.stderr.write(outcome.stdout ?? '');
      if (outcome.error) process.stderr.write(`npm could not be run: ${outcome.error.message}\n`);
      return false;
    }
    process.stderr.write('Installed.\n');
  }
  if (!existsSync(stampFile(root))) writeFileSync(stampFile(root), `${lockHash(root)}\n`);
  return true;
}
