import { bench } from './bench/index.ts';
import { counter } from './counter/index.ts';
import { office } from './office.ts';
import { parts } from './parts/index.ts';
import { specbook } from './specbook.ts';
import { till } from './till/index.ts';

/** The whole contract, a room a key. Every action of a screen is one call of it. */
export const contract = {
  counter,
  bench,
  specbook,
  parts,
  till,
  office,
};
export type Contract = typeof contract;
