/**
 * Under this name a call carries the key by which the desk knows it again when its answer was lost. It is
 * the field of the IETF draft 'The Idempotency-Key HTTP Header Field'; over a message port it goes along
 * just so.
 */
export const REQUEST_KEY = 'idempotency-key';
