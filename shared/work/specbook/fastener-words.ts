import { threadName } from '../../trade/index.ts';

/** What a fastener is called on screens and papers. */

/** Its thread as the source prints it, or by its standard name where nobody wrote that down. */
export const threadWords = (fastener: {
  designation: string;
  diameter: number;
  pitch: number;
}): string => (fastener.designation === '' ? threadName(fastener) : fastener.designation);

/** `class 8.8`, `grade 5`. */
export const classWords = (propertyClass: string): string =>
  propertyClass.startsWith('grade') ? propertyClass : `class ${propertyClass}`;
