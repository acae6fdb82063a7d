import { readFileSync, writeFileSync } from 'node:fs';
import { z } from 'zod';

export type Rectangle = { x: number; y: number; width: number; height: number };

const Saved = z.object({
  x: z.int(),
  y: z.int(),
  width: z.int().min(200).max(20_000),
  height: z.int().min(200).max(20_000),
  maximized: z.boolean(),
});
/** Where the window stood when it was last closed. */
export type WindowState = z.infer<typeof Saved>;

/** Device-independent pixels. */
export const smallestWindow = { width: 900, height: 640 };
const firstWindow = { width: 1280, height: 800 };

function visibleShare(window: Rectangle, display: Rectangle): number {
  const width =
    Math.min(window.x + window.width, display.x + display.width) - Math.max(window.x, display.x);
  const height =
    Math.min(window.y + window.height, display.y + display.height) - Math.max(window.y, display.y);
  return (Math.max(0, width) * Math.max(0, height)) / (window.width * window.height);
}

/** As much of the title bar as a person can take hold of, device-independent pixels. */
const gripHeight = 24;

/**
 * Bounds for the window: the saved ones if they still lie on a display with the title bar in reach,
 * else ones that let the system place the window, no larger than the main display has room for. A
 * display may have been unplugged since.
 */
export function boundsFor(
  saved: WindowState | undefined,
  displays: readonly Rectangle[],
  main: Rectangle,
): { width: number; height: number; x?: number; y?: number } {
  const fresh = {
    width: Math.min(firstWindow.width, main.width),
    height: Math.min(firstWindow.height, main.height),
  };
  if (!saved) return fresh;
  const place = {
    x: saved.x,
    y: saved.y,
    width: Math.max(saved.width, smallestWindow.width),
    height: Math.max(saved.height, smallestWindow.height),
  };
  const shown = (part: Rectangle): number =>
    displays.reduce((sum, display) => sum + visibleShare(part, display), 0);
  const isInReach = shown(place) >= 0.5 && shown({ ...place, height: gripHeight }) >= 0.5;
  return isInReach ? place : fresh;
}

/** The saved state, or undefined when there is none or somebody has spoilt the file. */
export function readWindowState(file: string): WindowState | undefined {
  try {
    return Saved.parse(JSON.parse(readFileSync(file, 'utf8')));
  } catch {
    return undefined;
  }
}

/** Keeps the state; a window that can't be remembered is no reason to stop closing it. */
export function writeWindowState(file: string, state: WindowState): void {
  try {
    writeFileSync(file, JSON.stringify(state));
  } catch {
    process.stderr.write(`The place of the window could not be kept in ${file}.\n`);
  }
}
