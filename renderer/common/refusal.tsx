import { Alert, List, Text } from '@mantine/core';
import { ORPCError } from '@orpc/client';
import { IconAlertTriangle } from '@tabler/icons-react';
import { z } from 'zod';
import { Issue } from '../../shared/contract/base.ts';
import { useMoney } from './shop.tsx';

/** Why the desk said no, in a sentence that says what to do next. */
export interface Refusal {
  /** The declared code, or CONNECTION_LOST, NO_KEY, UNEXPECTED for what lies outside the contract. */
  code: string;
  message: string;
  /** The fields at fault, when the input was. */
  issues: { path: string; message: string }[];
  data: unknown;
}

const WithIssues = z.object({ issues: z.array(Issue) });

const OUTSIDE = {
  CONNECTION_LOST:
    'Tappet’s store does not answer. See that Tappet is still running on its computer, then try again. If it was started anew, open the address that it printed; what you typed is kept.',
  NO_KEY:
    'This window has no key to the shop any more. Open the address that Tappet printed when it started.',
  UNEXPECTED:
    'Something went wrong inside Tappet and nothing was written. Try again; if it happens again, make a back-up and start Tappet anew.',
} as const;

const outside = (code: keyof typeof OUTSIDE): Refusal => ({
  code,
  message: OUTSIDE[code],
  issues: [],
  data: undefined,
});

/** The sentence that a field shows for a call's issue, and the rest of a refusal. */
export function refusalOf(error: unknown): Refusal {
  if (!(error instanceof ORPCError)) return outside('CONNECTION_LOST');
  if (error.status === 401 || error.status === 403) return outside('NO_KEY');
  if (!error.defined) return outside('UNEXPECTED');
  const issues = WithIssues.safeParse(error.data);
  return {
    code: error.code,
    message: error.message,
    issues: issues.success ? issues.data.issues : [],
    data: error.data,
  };
}

/** The issues by the path of their field, for a form's `errors`; the first one of a field wins. */
export function fieldErrors(error: unknown): Record<string, string> {
  if (error === null || error === undefined) return {};
  const found: Record<string, string> = {};
  for (const issue of refusalOf(error).issues) found[issue.path] ??= issue.message;
  return found;
}

interface RefusalAlertProps {
  error: unknown;
  mb?: string;
  /** The form shows the issues at its fields: they are not listed again. */
  brief?: boolean;
}

/** Shows a refusal; nothing while there is none. */
export function RefusalAlert({ error, mb, brief = false }: RefusalAlertProps) {
  if (error === null || error === undefined) return null;
  const refusal = refusalOf(error);
  return (
    <Alert
      role="alert"
      color="red"
      variant="light"
      icon={<IconAlertTriangle aria-hidden />}
      title={refusal.message}
      data-code={refusal.code}
      mb={mb}
    >
      {refusal.code === 'OVER_APPROVAL' && <OverApproval data={refusal.data} />}
      {!brief && refusal.issues.length > 0 && (
        <List size="sm">
          {refusal.issues.map((issue) => (
            <List.Item key={`${issue.path} ${issue.message}`}>
              {issue.path !== '' && (
                <Text span size="sm" fw={600}>
                  {fieldName(issue.path)}:{' '}
                </Text>
              )}
              {issue.message}
            </List.Item>
          ))}
        </List>
      )}
    </Alert>
  );
}

const LimitPassed = z.object({ total: z.int(), limit: z.int(), over: z.int() });

/** By how much the bill would pass what is approved. */
function OverApproval({ data }: { data: unknown }) {
  const money = useMoney();
  const passed = LimitPassed.safeParse(data);
  if (!passed.success) return null;
  const { total, limit, over } = passed.data;
  return (
    <Text size="sm">
      It would come to {money(total)}; without asking it may come to {money(limit)}. That is{' '}
      {money(over)} too much.
    </Text>
  );
}

/** `machine.engine.typeCode` is read as `machine › engine › type code`. */
function fieldName(path: string): string {
  return path
    .split('.')
    .map((step) => (/^\d+$/.test(step) ? `no. ${Number(step) + 1}` : spelled(step)))
    .join(' › ');
}

const spelled = (key: string): string =>
  key.replace(/(?<=[a-z])[A-Z]/g, (capital) => ` ${capital.toLowerCase()}`);
