/** Types of install.mjs, which is plain JavaScript as it runs before anything is installed. */
export function pinnedNode(root: string, platform?: NodeJS.Platform): string;
export function isInstalled(root: string, platform?: NodeJS.Platform): boolean;
export function ensureInstalled(root: string): boolean;
