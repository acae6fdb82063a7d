/** What a bin is called; parts without one lie together. */
export const binWords = (bin: string): string => (bin === '' ? 'No bin' : `Bin ${bin}`);
