/** What the other rooms read of the spec book. */
export {
  bookEntry,
  engineModelById,
  findEngineModelNames,
} from './specbook/models.ts';
export { specificationsById } from './specbook/specifications.ts';
