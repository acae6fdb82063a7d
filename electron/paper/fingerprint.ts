import { createHash } from 'node:crypto';
import type { PaperContent } from './content.ts';

/**
 * JSON in one form only, after RFC 8785 (JSON Canonicalization Scheme): no white space, members sorted by
 * the UTF-16 code units of their names, numbers and strings as ECMAScript writes them.
 * Members that are `undefined` are left out, as JSON.stringify does.
 * @throws TypeError for what JSON cannot carry: a number that is not finite, a lone surrogate, a function
 */
export function canonicalJson(value: unknown): string {
  if (value === null || typeof value === 'boolean') return JSON.stringify(value);
  if (typeof value === 'string') return canonicalString(value);
  if (typeof value === 'number') {
    if (!Number.isFinite(value)) throw new TypeError(`${value} cannot be written as JSON.`);
    return JSON.stringify(value);
  }
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(',')}]`;
  if (typeof value === 'object') {
    const members = Object.entries(value)
      .filter(([, member]) => member !== undefined)
      // Plain comparison is by UTF-16 code units, which is what RFC 8785, 3.2.3 asks for.
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([name, member]) => `${canonicalString(name)}:${canonicalJson(member)}`);
    return `{${members.join(',')}}`;
  }
  throw new TypeError(`A ${typeof value} cannot be written as JSON.`);
}

/** SHA-256 of the canonical JSON of a paper's content, as 64 lower-case hexadecimal digits. */
export function fingerprintOf(content: PaperContent): string {
  return createHash('sha256').update(canonicalJson(content), 'utf8').digest('hex');
}

function canonicalString(text: string): string {
  if (!text.isWellFormed()) throw new TypeError('A lone surrogate cannot be written as JSON.');
  return JSON.stringify(text);
}
