import { join } from 'node:path';

/** The folder of the back-ups in a data folder. */
export const backUpFolder = (dataFolder: string): string => join(dataFolder, 'backups');

/**
 * Where a file to be brought back is put and checked. It is on the disk of the data folder, so that it can take
 * the store's place by a new name alone, and it is emptied whenever the store is opened.
 */
export const stageFolder = (dataFolder: string): string => join(dataFolder, 'bringing-back');
