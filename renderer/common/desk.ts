import { createTanstackQueryUtils } from '@orpc/tanstack-query';
import { desk } from './connection/desk.ts';

export { desk };

/** The calls of the desk as options for queries and mutations. */
export const deskQuery = createTanstackQueryUtils(desk);
