import { type ErrorMap, isContractProcedure } from '@orpc/contract';
import { z } from 'zod';
import { contract } from '../../shared/contract/index.ts';
import { PlainRefusal } from '../launch/sentence.ts';

type JsonSchema = Record<string, unknown>;

export type ProcedureEntry = {
  input: JsonSchema;
  output: JsonSchema;
  errors: Record<string, { status?: number; message?: string; data?: JsonSchema }>;
};

type Found = [name: string, entry: ProcedureEntry];

function schemaOf(schema: unknown, io: 'input' | 'output'): JsonSchema {
  if (!(schema instanceof z.ZodType)) return {};
  return z.toJSONSchema(schema, { io, unrepresentable: 'any' }) as JsonSchema;
}

function entryOf(procedure: unknown): ProcedureEntry | undefined {
  if (!isContractProcedure(procedure)) return undefined;
  const { inputSchema, outputSchema } = procedure['~orpc'];
  const errorMap: ErrorMap = procedure['~orpc'].errorMap;
  const errors: ProcedureEntry['errors'] = {};
  for (const [code, item] of Object.entries(errorMap)) {
    if (!item) continue;
    const { status, message, data } = item;
    errors[code] = { status, message, ...(data && { data: schemaOf(data, 'output') }) };
  }
  return {
    input: schemaOf(inputSchema, 'input'),
    output: schemaOf(outputSchema, 'output'),
    errors,
  };
}

function collect(node: object, prefix: string): Found[] {
  return Object.entries(node).flatMap(([key, value]): Found[] => {
    const name = prefix === '' ? key : `${prefix}.${key}`;
    const entry = entryOf(value);
    if (entry) return [[name, entry]];
    return typeof value === 'object' && value !== null ? collect(value, name) : [];
  });
}

/** Every procedure of the contract by its name (`counter.takeIn`), with JSON Schemas. */
export function listProcedures(): Record<string, ProcedureEntry> {
  return Object.fromEntries(collect(contract, ''));
}

function namesIn(node: object, prefix: string): string[] {
  return Object.entries(node).flatMap(([key, value]): string[] => {
    const name = prefix === '' ? key : `${prefix}.${key}`;
    if (isContractProcedure(value)) return [name];
    return typeof value === 'object' && value !== null ? namesIn(value, name) : [];
  });
}

/**
 * @throws PlainRefusal when no procedure has that name
 */
export function requireProcedure(name: string): void {
  if (procedureNames().includes(name)) return;
  throw new PlainRefusal(
    'NO_SUCH_PROCEDURE',
    `There is no procedure '${name}'. npm run -s desk -- LIST names them all.`,
  );
}

/** The names alone, without the work of writing out schemas. */
export function procedureNames(): string[] {
  return namesIn(contract, '');
}
