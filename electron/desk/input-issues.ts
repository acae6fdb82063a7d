import type { ValidationError } from '@orpc/server';
import { z } from 'zod';

/** One fault of an input: the path of its field, and what is wrong with it. */
export type Issue = { path: string; message: string };

type Step = PropertyKey | { key: PropertyKey };
type Found = { path?: readonly Step[] | undefined; message: string };

/** `lines.0.quantity`; the input as a whole is the empty path. */
const pathText = (path: readonly Step[]): string =>
  path.map((step) => String(typeof step === 'object' ? step.key : step)).join('.');

const UnknownFields = z.object({
  code: z.literal('unrecognized_keys'),
  keys: z.array(z.string()),
});
const Alternatives = z.object({
  code: z.literal('invalid_union'),
  errors: z.array(z.array(z.custom<Found & { path: Step[] }>())),
});

/**
 * The issues within a group that may have one form or another: those of the form that comes nearest.
 * None when the value is no group of fields in the first place.
 */
function nearest(errors: readonly (readonly (Found & { path: Step[] })[])[]) {
  const groups = errors.filter((issues) =>
    issues.some((issue) => (issue.path?.length ?? 0) > 0 || UnknownFields.safeParse(issue).success),
  );
  return groups.toSorted((a, b) => a.length - b.length)[0] ?? [];
}

function explained(issue: Found, above: readonly Step[]): Issue[] {
  const path = [...above, ...(issue.path ?? [])];
  const unknown = UnknownFields.safeParse(issue);
  if (unknown.success)
    return unknown.data.keys.map((key) => ({
      path: pathText([...path, key]),
      message: issue.message,
    }));
  const alternatives = Alternatives.safeParse(issue);
  const within = alternatives.success ? nearest(alternatives.data.errors) : [];
  if (within.length > 0) return within.flatMap((inner) => explained(inner, path));
  return [{ path: pathText(path), message: issue.message }];
}

/**
 * An issue for each field at fault. Zod tells of fields that nobody knows, and of groups that fit none of
 * their forms, at the group around them.
 */
export function inputIssues(error: ValidationError): Issue[] {
  return error.issues.flatMap((issue) => explained(issue, []));
}
