import { integer, text } from 'drizzle-orm/sqlite-core';

/** Column kinds that the rooms' tables share. */

/** Opaque id, UUID version 7. */
export const id = () => text('id').primaryKey();

/** Instant, UTC, ISO 8601 with milliseconds: sorts as text. */
export const instant = (name: string) => text(name);

/** Calendar date, ISO 8601. */
export const date = (name: string) => text(name);

/** Money in integer minor units of the shop's currency. */
export const minor = (name: string) => integer(name);

/** Yes or no, kept as 0 or 1. */
export const flag = (name: string) => integer(name, { mode: 'boolean' });

/** A JSON value; what shape it has is said by the type at the column. */
export const json = <T>(name: string) => text(name, { mode: 'json' }).$type<T>();
