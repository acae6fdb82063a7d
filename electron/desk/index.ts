import { bench } from './bench/index.ts';
import { counter } from './counter/index.ts';
import { os } from './implementer.ts';
import { office } from './office.ts';
import { parts } from './parts/index.ts';
import { specbook } from './specbook.ts';
import { till } from './till/index.ts';

export { endWork } from './back-ups/long-work.ts';
export { backUpDaily } from './back-ups/make.ts';
export { type DeskContext, undisturbed } from './context.ts';
export { deskInterceptors } from './refuse.ts';
export { takeRequestKey } from './request-key.ts';

/** The desk: every procedure of the contract with its handler. It knows nothing of how calls arrive. */
export const desk = os.router({ counter, bench, specbook, parts, till, office });
