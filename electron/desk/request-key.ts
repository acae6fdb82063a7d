import type { StandardHandlerOptions } from '@orpc/server/standard';
import { z } from 'zod';
import { REQUEST_KEY } from '../../shared/request-key.ts';
import type { DeskContext } from './context.ts';

type Interceptor = NonNullable<StandardHandlerOptions<DeskContext>['interceptors']>[number];

/**
 * For the `interceptors` of a handler: hands on the key that a call came with, if any. It is given out
 * once, so that a handler which writes in steps goes by it in the first of them only.
 */
export const takeRequestKey: Interceptor = ({ next, ...call }) => {
  let key = z.uuid().safeParse(call.request.headers[REQUEST_KEY]).data ?? null;
  const requestKey = () => {
    const given = key;
    key = null;
    return given;
  };
  return next({ ...call, context: { ...call.context, requestKey } });
};
