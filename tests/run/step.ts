import { spawn } from 'node:child_process';
import { delimiter, join, resolve } from 'node:path';

export const root = resolve(import.meta.dirname, '..', '..');

export type Step = {
  name: string;
  /** A program of node_modules/.bin, or any other. */
  command: string;
  args: readonly string[];
  environment?: Readonly<Record<string, string>>;
  /** Milliseconds; a step that takes longer is stopped and has failed. */
  limit?: number;
};

export type StepOutcome = {
  name: string;
  passed: boolean;
  seconds: number;
  output: string;
};

/** Runs one step without a keyboard and keeps what it says. */
export function runStep({
  name,
  command,
  args,
  environment,
  limit = 600_000,
}: Step): Promise<StepOutcome> {
  const begun = Date.now();
  return new Promise((resolve) => {
    let output = '';
    const child = spawn(command, args, {
      cwd: root,
      // Windows keeps npm's programs as scripts for its shell.
      shell: process.platform === 'win32',
      stdio: ['ignore', 'pipe', 'pipe'],
      env: {
        ...process.env,
        PATH: `${join(root, 'node_modules', '.bin')}${delimiter}${process.env.PATH ?? ''}`,
        NO_COLOR: '1',
        ...environment,
      },
    });
    const timer = setTimeout(() => {
      output += `\nStopped: it took longer than ${limit / 1000} s.\n`;
      child.kill('SIGTERM');
    }, limit);
    const finish = (passed: boolean): void => {
      clearTimeout(timer);
      resolve({ name, passed, seconds: (Date.now() - begun) / 1000, output });
    };
    const listen = (chunk: Buffer): void => {
      output += chunk.toString();
    };
    child.stdout.on('data', listen);
    child.stderr.on('data', listen);
    child.on('error', ({ message }) => {
      output += message;
      finish(false);
    });
    child.on('close', (code) => finish(code === 0));
  });
}

/** Runs steps one after another; each is told as it ends. */
export async function runLane(
  steps: readonly Step[],
  tell: (outcome: StepOutcome) => void,
): Promise<StepOutcome[]> {
  const outcomes: StepOutcome[] = [];
  for (const step of steps) {
    const outcome = await runStep(step);
    tell(outcome);
    outcomes.push(outcome);
  }
  return outcomes;
}
