import type { BackUpTroubleCode } from '../../shared/work/office/back-ups.ts';

/** A copy that was not made, or a file that can't be brought back; the contract has the sentences. */
export class BackUpTrouble extends Error {
  readonly code: BackUpTroubleCode;

  constructor(code: BackUpTroubleCode, options: { cause?: unknown; detail?: string } = {}) {
    super(options.detail ? `${code}: ${options.detail}` : code, { cause: options.cause });
    this.name = 'BackUpTrouble';
    this.code = code;
  }
}

/** Takes note of how far a work is, from 0 to 1, and throws when it is to stop. */
export type Tell = (share: number) => void;
