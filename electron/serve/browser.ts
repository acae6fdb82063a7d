import { spawn } from 'node:child_process';

type Surroundings = {
  platform: NodeJS.Platform;
  environment: Readonly<Record<string, string | undefined>>;
};

/** Whether somebody sits before a desktop on which a window or a browser can be opened. */
export function hasDesktop(
  { platform, environment }: Surroundings = {
    platform: process.platform,
    environment: process.env,
  },
): boolean {
  if (environment.CI) return false;
  if (platform === 'win32' || platform === 'darwin') return true;
  return Boolean(environment.DISPLAY || environment.WAYLAND_DISPLAY);
}

/** The system's own way to open an address in the browser that the person uses. */
export function browserCommand(
  address: string,
  platform: NodeJS.Platform = process.platform,
): [command: string, ...args: string[]] {
  if (platform === 'win32') return ['rundll32', 'url.dll,FileProtocolHandler', address];
  if (platform === 'darwin') return ['open', address];
  return ['xdg-open', address];
}

/** Opens the browser; the address is printed anyway, so a failure needs no word. */
export function openBrowser(address: string): void {
  const [command, ...args] = browserCommand(address);
  const child = spawn(command, args, { detached: true, stdio: 'ignore' });
  child.on('error', () => undefined);
  child.unref();
}
