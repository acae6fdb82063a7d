export * from './bench.ts';
export * from './buying.ts';
export * from './counter.ts';
export * from './office.ts';
export * from './parts.ts';
export * from './specbook.ts';
export * from './stock.ts';
export * from './till.ts';
