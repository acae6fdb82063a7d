import { StoreRefusal } from '../../db/refusal.ts';
import { PlainRefusal } from './sentence.ts';

/** Says a refusal in its plain sentence; anything else is a fault of ours and keeps its stack. */
export function reportAndExit(error: unknown): void {
  if (error instanceof PlainRefusal) {
    process.stderr.write(`${error.message}\n`);
    process.exitCode = error.exitCode;
  } else if (error instanceof StoreRefusal) {
    process.stderr.write(`${error.message}\n`);
    process.exitCode = 1;
  } else {
    process.stderr.write(`${error instanceof Error ? error.stack : String(error)}\n`);
    process.exitCode = 1;
  }
}
